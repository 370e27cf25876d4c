// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// Number fields one below the other; each tells from where to where it is taken.
Column {
    id: list
    required property Session session
    property var fields: [] // of NumberField
    property var datumOf: null // function of a field
    signal entered() // with Return or Enter

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
            HoverHandler { id: pointer }
            Hint {
                text: list.datumOf ? list.datumOf(entry.field, entry.label) : ""
                visible: text && (pointer.hovered || entry.typing) && !entry.field.message
                delay: entry.typing ? 1200 : 700
            }
        }
    }
}
