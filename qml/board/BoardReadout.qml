// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import Tripoise

// Below the drawing: knee and hip over a turn with the slider that turns the crank, and what comes
// of a pull. As high with a pull as without, so that the drawing stays where it is. Where it is
// narrow, one at a time.
Item {
    id: readout
    required property Board board
    readonly property bool narrow: width < 46 * Look.small

    implicitHeight: 5 * Math.round(1.5 * Look.small) + 2 * Look.smallGap
    visible: board.drawn

    RowLayout {
        anchors.fill: parent
        anchors.margins: Look.smallGap
        spacing: Look.gap

        CrankStrip {
            objectName: "crankStrip"
            board: readout.board
            visible: !(readout.narrow && readout.board.pulled)
            Layout.fillHeight: true
            Layout.fillWidth: true
            Layout.preferredWidth: 5
            Layout.minimumWidth: Math.min(16 * Look.small, readout.width - 2 * Look.smallGap)
            Layout.maximumWidth: readout.narrow ? readout.width : 42 * Look.small
        }
        Item {
            visible: !readout.narrow || readout.board.pulled
            Layout.fillHeight: true
            Layout.fillWidth: true
            Layout.preferredWidth: 5

            InkText {
                objectName: "pullHint"
                visible: !readout.board.pulled && implicitHeight <= readout.height // whole or not at all
                width: parent.width
                anchors.verticalCenter: parent.verticalCenter
                color: Look.soft
                font.pixelSize: Look.small
                text: qsTr("Pull at the grips, the saddle or the spacers to try another set-up; arrow keys move what is chosen by 1 mm.")
            }
            Scroll {
                id: told
                visible: readout.board.pulled
                anchors {
                    left: parent.left
                    right: readout.narrow ? parent.right : back.left
                    top: parent.top
                    bottom: readout.narrow ? back.top : parent.bottom
                    rightMargin: readout.narrow ? 0 : Look.smallGap
                    bottomMargin: readout.narrow ? Look.hairGap : 0
                }
                contentHeight: lines.implicitHeight
                Column {
                    id: lines
                    width: told.width - Look.smallGap
                    InkText {
                        objectName: "pulledText"
                        width: parent.width
                        font.pixelSize: Look.small
                        font.bold: true
                        text: readout.board.pulledText
                    }
                    Repeater {
                        model: readout.board.findings.length // lines that stay are not made anew
                        Row {
                            id: finding
                            required property int index
                            width: parent.width
                            spacing: Look.hairGap
                            Icon {
                                name: "hazard"
                                color: Look.hazardText
                                width: Look.small
                                height: Look.small
                            }
                            InkText {
                                width: parent.width - Look.small - Look.hairGap
                                font.pixelSize: Look.small
                                color: Look.hazardText
                                text: readout.board.findings[finding.index]?.text ?? ""
                            }
                        }
                    }
                    Repeater {
                        model: 4
                        InkText {
                            required property int index
                            visible: text
                            width: parent.width
                            font.pixelSize: Look.small
                            text: [readout.board.carryText, readout.board.nearestText, readout.board.steeringText, readout.board.loadText][index]
                        }
                    }
                }
            }
            InkButton {
                id: back
                objectName: "backToAdvised"
                visible: readout.board.pulled
                anchors.right: parent.right
                y: readout.narrow ? parent.height - height : Math.round((parent.height - height) / 2)
                font.pixelSize: Look.small
                text: qsTr("Back to advised")
                onClicked: readout.board.backToAdvised()
            }
        }
    }
}
