// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import Tripoise

// A name on a line of its own, taken when the keys leave it.
Column {
    id: entry
    required property Session session
    property string label
    property string value
    property string message
    readonly property alias input: line
    signal named(string name)
    spacing: 1

    InkText {
        text: entry.label
        font.pixelSize: Look.small
        color: Look.soft
        width: entry.width
        Accessible.ignored: true
    }
    TextEntry {
        id: line
        objectName: "input"
        property bool edited: false
        name: entry.label
        level: entry.message ? "wrong" : "fine"
        Accessible.description: entry.message
        width: entry.width
        onTextEdited: edited = true
        onEditingFinished: {
            if (!edited)
                return
            edited = false
            entry.named(text)
        }
        onUndoAsked: entry.session.undo()
        onRedoAsked: entry.session.redo()
        Keys.onEscapePressed: {
            edited = false
            text = entry.value
            entry.named(text)
        }
        Component.onCompleted: text = entry.value
    }
    onValueChanged: line.text = value
    RowLayout {
        visible: entry.message
        spacing: Look.hairGap
        width: entry.width
        Icon {
            name: "hazard"
            color: Look.hazardText
            Layout.preferredWidth: Look.body
            Layout.preferredHeight: Look.body
            Layout.alignment: Qt.AlignTop
        }
        InkText {
            objectName: "message"
            text: entry.message
            font.pixelSize: Look.small
            color: Look.hazardText
            Layout.fillWidth: true
            Accessible.role: Accessible.AlertMessage
        }
    }
    Connections {
        target: entry.session
        function onStarted() { // another fitting: what was typed for the one before is not its
            line.edited = false
            line.text = entry.value
        }
    }
}
