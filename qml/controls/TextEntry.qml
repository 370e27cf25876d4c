// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Templates as T
import Tripoise

// A line to write on. What is inferred stands on it in pencil until something is written.
T.TextField {
    id: entry
    property string level: "fine" // fine, note, odd, wrong
    property string name

    font.family: Look.family
    font.pixelSize: Look.body
    color: Look.ink
    placeholderTextColor: Look.soft
    selectionColor: Look.ink
    selectedTextColor: Look.paper
    selectByMouse: true
    leftPadding: Look.smallGap
    rightPadding: Look.smallGap
    topPadding: Look.hairGap
    bottomPadding: Look.hairGap
    implicitHeight: Look.control
    implicitWidth: 90
    verticalAlignment: TextInput.AlignVCenter
    Accessible.role: Accessible.EditableText
    Accessible.name: name
    // Read from its beginning, written on at its end or where it is clicked.
    onTextChanged: if (!focus) cursorPosition = 0
    onFocusChanged: {
        if (!focus)
            cursorPosition = 0
        else if (focusReason !== Qt.MouseFocusReason)
            cursorPosition = length
    }
    // The program's history is undone, not this field's alone.
    Keys.priority: Keys.BeforeItem
    Keys.onPressed: event => {
        if (event.matches(StandardKey.Undo)) { // qmllint disable
            entry.undoAsked()
            event.accepted = true
        } else if (event.matches(StandardKey.Redo)) { // qmllint disable
            entry.redoAsked()
            event.accepted = true
        }
    }
    signal undoAsked()
    signal redoAsked()

    Text { // pencil
        visible: !entry.text && !entry.preeditText
        anchors.fill: parent
        leftPadding: entry.leftPadding
        rightPadding: entry.rightPadding
        text: entry.placeholderText
        textFormat: Text.PlainText
        font.family: entry.font.family
        font.pixelSize: entry.font.pixelSize
        font.italic: true
        color: Look.soft
        verticalAlignment: Text.AlignVCenter
        elide: Text.ElideRight
    }
    background: Rectangle {
        color: entry.readOnly ? "transparent" : Look.sheet
        radius: Look.radius
        border.width: entry.level === "wrong" ? 2 : 1
        border.color: entry.level === "wrong" || entry.level === "odd" ? Look.hazardText : Look.edge
        FocusRing { target: entry }
    }
}
