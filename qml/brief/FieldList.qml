// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// Number fields one below the other; each tells from where to where it is taken.
Column {
    id: list
    required property Session session
    property var fields: [] // of NumberField
    property var datumOf: null // function of a field
    property var pictured: null // function of a field's key: whether its method has a picture
    signal entered() // with Return or Enter
    signal measuring(string key, string name, string datum, Item beside)
    signal measured()

    spacing: Look.hairGap

    function takeFocus() {
        const first = repeater.itemAt(0)
        if (first)
            first.input.forceActiveFocus(Qt.TabFocusReason)
    }

    Repeater {
        id: repeater
        model: list.fields
        NumberEntry {
            id: entry
            required property NumberField modelData
            objectName: "field_" + modelData.objectName
            field: modelData
            session: list.session
            width: list.width
            Connections {
                target: entry.input
                function onAccepted() { list.entered() }
            }
            readonly property string datum: list.datumOf ? list.datumOf(field, label) : ""
            readonly property bool shown: list.pictured ? list.pictured(field.objectName) : false
            onTypingChanged: {
                if (shown && typing)
                    list.measuring(field.objectName, label, datum, entry)
                else if (shown)
                    list.measured()
            }
            HoverHandler { id: pointer }
            Hint {
                text: entry.datum
                visible: text && (pointer.hovered || entry.typing) && !(entry.typing && entry.shown) && !entry.field.message
                delay: entry.typing ? 1200 : 700
            }
        }
    }
}
