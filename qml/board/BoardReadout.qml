// SPDX-License-Identifier: MIT
import QtQuick
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

    CrankStrip {
        id: turn
        objectName: "crankStrip"
        board: readout.board
        visible: !(readout.narrow && readout.board.pulled)
        anchors { left: parent.left; top: parent.top; bottom: parent.bottom; margins: Look.smallGap }
        width: readout.narrow ? parent.width - 2 * Look.smallGap : Math.round(Math.min(42 * Look.small, 0.48 * parent.width))
    }
    Item {
        visible: !readout.narrow || readout.board.pulled
        anchors { top: parent.top; bottom: parent.bottom; right: parent.right; margins: Look.smallGap }
        anchors { left: readout.narrow ? parent.left : turn.right; leftMargin: readout.narrow ? Look.smallGap : Look.gap }

        InkText {
            objectName: "pullHint"
            visible: !readout.board.pulled && implicitHeight <= readout.height // whole or not at all
            width: parent.width
            anchors.verticalCenter: parent.verticalCenter
            color: Look.soft
            font.pixelSize: Look.small
            text: qsTr("Pull at the grips, the saddle or the spacers to try another set-up; arrow keys move what is chosen by 1 mm.")
        }
        InkText {
            id: pulled
            objectName: "pulledText"
            visible: readout.board.pulled
            anchors { left: parent.left; right: back.left; rightMargin: Look.smallGap }
            y: Math.max(0, Math.round((back.height - height) / 2))
            font.pixelSize: Look.small
            font.bold: true
            text: readout.board.pulledText
        }
        InkButton {
            id: back
            objectName: "backToAdvised"
            visible: readout.board.pulled
            anchors { right: parent.right; top: parent.top }
            font.pixelSize: Look.small
            implicitHeight: Math.round(Look.control * 0.8)
            text: qsTr("Back to advised")
            onClicked: readout.board.backToAdvised()
        }
        Scroll {
            id: told
            objectName: "pullTold"
            visible: readout.board.pulled
            anchors { left: parent.left; right: parent.right; top: parent.top; bottom: parent.bottom }
            anchors.topMargin: Math.max(back.height, pulled.height) + Look.hairGap
            contentHeight: lines.implicitHeight
            Column {
                id: lines
                width: told.width - Look.smallGap
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
                    model: 5
                    InkText {
                        required property int index
                        visible: text
                        width: parent.width
                        font.pixelSize: Look.small
                        text: [readout.board.carryText, readout.board.nearestText, readout.board.roomText,
                               readout.board.steeringText, readout.board.loadText][index]
                    }
                }
            }
        }
    }
}
