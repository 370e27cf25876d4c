// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import Tripoise

// What is to be said about a table, and beside it the button that does something about it.
Item {
    id: list
    required property TablePage page
    signal meaningAsked(int line)
    implicitHeight: notes.height + 2 * notes.y

    Scroll {
        anchors.fill: parent
        contentHeight: list.implicitHeight
        Column {
            id: notes
            y: Look.hairGap // room for a focus ring
            x: y
            width: parent.width - Look.gap - x
            spacing: Look.hairGap
            Repeater {
                model: list.page.notes
                RowLayout {
                    id: note
                    required property int index
                    required property string told
                    required property string level
                    required property string stepText
                    width: notes.width
                    spacing: Look.smallGap
                    Icon {
                        name: note.level === "note" ? "minus" : "hazard"
                        color: note.level === "wrong" ? Look.hazardText : Look.soft
                        Layout.preferredWidth: Look.body
                        Layout.preferredHeight: Look.body
                    }
                    InkText {
                        objectName: "note_" + note.index
                        text: note.told
                        color: note.level === "wrong" ? Look.hazardText : Look.ink
                        Layout.fillWidth: true
                    }
                    InkButton {
                        objectName: "step_" + note.index
                        visible: note.stepText
                        text: note.stepText
                        Accessible.description: note.told
                        onClicked: {
                            const line = list.page.step(note.index)
                            if (line >= 0)
                                list.meaningAsked(line)
                        }
                    }
                }
            }
        }
    }
}
