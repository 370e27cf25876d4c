// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import Tripoise

// One number: its name, where it is typed, its unit, and a word beside it when something is odd.
ColumnLayout {
    id: entry
    required property NumberField field
    required property Session session
    property string label: field.label
    property string spoken: label // where the label alone would not tell
    property bool labelled: true
    property int fieldWidth: Math.round(84 * Look.textScale)
    readonly property bool typing: line.activeFocus
    property alias input: line
    readonly property bool wraps: labelled && width < name.implicitWidth + fieldWidth + unit.width + 2 * Look.smallGap

    spacing: 1

    GridLayout {
        Layout.fillWidth: true
        columns: entry.wraps ? 2 : 3
        columnSpacing: Look.smallGap
        rowSpacing: 1
        InkText {
            id: name
            visible: entry.labelled
            text: entry.label
            color: Look.ink
            Layout.fillWidth: true
            Layout.columnSpan: entry.wraps ? 2 : 1
            Accessible.ignored: true
        }
        TextEntry {
            id: line
            objectName: "input"
            name: entry.field.unitLabel ? entry.spoken + ", " + entry.field.unitLabel : entry.spoken
            placeholderText: entry.field.placeholder
            level: entry.field.level
            Accessible.description: entry.field.message
            Layout.preferredWidth: entry.fieldWidth
            Layout.fillWidth: entry.wraps
            property bool edited: false // by the keys, since it was last taken
            onTextEdited: {
                edited = true
                entry.field.type(text)
            }
            onEditingFinished: {
                if (edited) {
                    edited = false
                    entry.field.commit(text)
                }
            }
            onUndoAsked: {
                edited = false
                if (!entry.field.takeBack()) // first what does not count
                    entry.session.undo()
            }
            onRedoAsked: { edited = false; entry.session.redo() }
            Keys.onUpPressed: { edited = false; entry.field.step(1) }
            Keys.onDownPressed: { edited = false; entry.field.step(-1) }
            Keys.onEscapePressed: { edited = false; entry.field.revert() }
            Component.onCompleted: text = entry.field.text
        }
        InkText {
            id: unit
            text: entry.field.unitLabel
            font.pixelSize: Look.small
            color: Look.soft
            wrapMode: Text.NoWrap
            Layout.preferredWidth: Math.max(implicitWidth, Math.round(20 * Look.textScale))
            Accessible.ignored: true
        }
    }
    RowLayout {
        visible: entry.field.message
        spacing: Look.hairGap
        Layout.fillWidth: true
        Icon {
            visible: entry.field.level === "odd" || entry.field.level === "wrong"
            name: "hazard"
            color: Look.hazardText
            Layout.preferredWidth: Look.body
            Layout.preferredHeight: Look.body
            Layout.alignment: Qt.AlignTop
        }
        InkText {
            objectName: "message"
            text: entry.field.message
            font.pixelSize: Look.small
            color: entry.field.level === "note" ? Look.soft : Look.hazardText
            Layout.fillWidth: true
            Accessible.role: Accessible.AlertMessage
        }
    }
    Connections {
        target: entry.field
        function onChanged() {
            if (line.text !== entry.field.text)
                line.text = entry.field.text
        }
    }
}
