// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import Tripoise

// The screen turned round: the same drawing for the rider's side of the bench, large, few words.
// The bicycles take each other's place, so that the eye sees what moves.
FocusScope {
    id: view
    required property Session session
    signal leave()
    readonly property alias board: board
    readonly property int words: Math.max(24, Math.round(Math.min(width / 45, height / 28)))

    focus: true
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("For the rider")
    Keys.onEscapePressed: leave()
    Keys.onLeftPressed: board.step(-1)
    Keys.onRightPressed: board.step(1)
    Keys.onSpacePressed: board.step(1)

    Rectangle {
        anchors.fill: parent
        color: Look.paper
    }
    MouseArea { anchors.fill: parent } // nothing underneath is reached

    RowLayout {
        anchors.fill: parent
        anchors.margins: view.words
        spacing: view.words

        ColumnLayout {
            spacing: view.words / 2
            Layout.fillWidth: true
            Layout.fillHeight: true
            RowLayout {
                spacing: Look.smallGap
                Layout.fillWidth: true
                Repeater {
                    model: board.choices
                    InkButton {
                        required property var modelData
                        objectName: "show_" + modelData.which
                        text: modelData.name
                        strong: board.which === modelData.which
                        font.pixelSize: view.words
                        implicitHeight: Math.round(view.words * 1.8)
                        Accessible.role: Accessible.RadioButton
                        Accessible.checkable: true
                        Accessible.checked: strong
                        onClicked: board.which = modelData.which
                    }
                }
                Item { Layout.fillWidth: true }
            }
            RiderBoard {
                id: board
                objectName: "riderBoard"
                session: view.session
                night: Look.night
                Layout.fillWidth: true
                Layout.fillHeight: true
                Accessible.role: Accessible.Graphic
                Accessible.name: board.title
                Accessible.description: board.description
            }
            InkText {
                objectName: "riderChange"
                text: board.change
                font.pixelSize: view.words
                Layout.fillWidth: true
                Layout.minimumHeight: Math.round(view.words * 2.6)
            }
        }
        ColumnLayout {
            spacing: view.words / 2
            Layout.preferredWidth: Math.round(view.width * 0.36)
            Layout.maximumWidth: Math.round(view.width * 0.36)
            Layout.fillHeight: true
            Repeater {
                model: board.reasons
                RowLayout {
                    id: reason
                    required property var modelData
                    spacing: view.words / 2
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    Vignette {
                        board: board
                        kind: reason.modelData.kind
                        Layout.preferredWidth: Math.round(view.width * 0.12)
                        Layout.preferredHeight: Math.round(view.height * 0.22)
                        Accessible.ignored: true
                    }
                    ColumnLayout {
                        spacing: Look.hairGap
                        Layout.fillWidth: true
                        InkText {
                            text: reason.modelData.title
                            font.pixelSize: view.words
                            font.bold: true
                            Layout.fillWidth: true
                        }
                        InkText {
                            text: reason.modelData.text
                            font.pixelSize: Math.round(view.words * 0.85)
                            Layout.fillWidth: true
                        }
                    }
                }
            }
            InkButton {
                objectName: "leaveRider"
                text: qsTr("Back to the bench")
                Layout.alignment: Qt.AlignRight
                onClicked: view.leave()
            }
        }
    }
}
