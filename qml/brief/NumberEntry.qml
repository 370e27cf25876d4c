// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import Tripoise

// One number: its name, where it is typed, its unit, what belongs on the same line, and a word
// under it when something is odd. Name and field share a line where there is room.
Item {
    id: entry
    required property NumberField field
    required property Session session
    property string label: field.label
    property string spoken: label // where the label alone would not tell
    property bool labelled: true
    property bool under: false // always under its name
    property int fieldWidth: Math.round(84 * Look.textScale)
    property bool goesOn: true // Return goes to the next line
    property var keyed: null // asked first with a key's text: whether it was meant otherwise
    readonly property bool typing: line.activeFocus
    property alias input: line
    default property alias aside: aside.data

    readonly property int unitWidth: Math.max(unit.implicitWidth, Math.round(22 * Look.textScale))
    readonly property bool onOneLine: labelled && !under
        && width >= natural.advanceWidth + fieldWidth + unitWidth + 2 * Look.smallGap

    implicitWidth: fieldWidth + unitWidth + Look.smallGap
    readonly property real lineEnd: Math.max(line.y + line.height, aside.width > 0 ? aside.y + aside.height : 0)
    implicitHeight: told.visible ? told.y + told.height : lineEnd

    TextMetrics {
        id: natural
        font: name.font
        text: entry.label
    }
    InkText {
        id: name
        visible: entry.labelled
        text: entry.label
        y: entry.onOneLine ? (line.height - height) / 2 : 0
        width: entry.onOneLine ? line.x - Look.smallGap : entry.width
        Accessible.ignored: true
    }
    TextEntry {
        id: line
        objectName: "input"
        name: entry.field.unitLabel ? entry.spoken + ", " + entry.field.unitLabel : entry.spoken
        placeholderText: entry.field.placeholder
        level: entry.field.level
        Accessible.description: entry.field.message
        x: entry.onOneLine ? entry.width - entry.unitWidth - Look.hairGap - width : 0
        y: entry.onOneLine || !entry.labelled ? 0 : name.height + 2
        width: Math.min(entry.fieldWidth, entry.width - entry.unitWidth - Look.hairGap)
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
        onAccepted: if (entry.goesOn) Presser.toNextLine(line)
        Keys.onPressed: event => {
            if (entry.keyed?.(event.text))
                event.accepted = true
        }
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
        x: line.x + line.width + Look.hairGap
        y: line.y + (line.height - height) / 2
        Accessible.ignored: true
    }
    Row {
        id: aside
        readonly property bool fits: entry.width - unit.x - entry.unitWidth >= implicitWidth + Look.hairGap
        x: fits ? entry.width - implicitWidth : 0
        y: fits ? line.y + (line.height - height) / 2 : line.y + line.height + Look.hairGap
    }
    RowLayout {
        id: told
        visible: entry.field.message
        y: entry.lineEnd + 2
        width: entry.width
        spacing: Look.hairGap
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
    Connections {
        target: entry.session
        function onStarted() { // another fitting: what was typed for the one before is not its
            line.edited = false
            entry.field.forget()
        }
    }
}
