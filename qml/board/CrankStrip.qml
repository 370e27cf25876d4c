// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import Tripoise

// Knee and hip over a turn; the slider under them turns the crank.
ColumnLayout {
    id: strip
    required property Board board
    spacing: 0

    TurnChart {
        id: chart
        board: strip.board
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.minimumWidth: 8 // never too small to be painted on
        Layout.minimumHeight: 8
        Layout.rightMargin: number.width + bottom.width + 2 * Look.hairGap
        Layout.leftMargin: slide.handle.width / 2
        Accessible.role: Accessible.Chart
        Accessible.name: description
    }
    RowLayout {
        spacing: Look.hairGap
        Slide {
            id: slide
            objectName: "crank"
            name: qsTr("Crank")
            valueText: strip.board.crankText
            from: 0
            to: 360
            stepSize: 1
            value: strip.board.crankDeg
            padding: 0
            implicitHeight: Math.round(Look.control * 0.7)
            onMoved: strip.board.crankDeg = value
            Layout.fillWidth: true
        }
        InkText {
            id: number
            objectName: "crankText"
            text: strip.board.crankText
            font.pixelSize: Look.small
            wrapMode: Text.NoWrap
            horizontalAlignment: Text.AlignRight
            Layout.preferredWidth: 3.2 * Look.small
        }
        Chip {
            id: bottom
            objectName: "crankToBottom"
            checkable: false
            iconName: "bottom"
            hint: qsTr("Pedal at the bottom of its turn")
            enabled: strip.board.crankTurned
            implicitHeight: Math.round(Look.control * 0.7)
            leftPadding: Look.hairGap
            rightPadding: Look.hairGap
            onClicked: strip.board.crankToBottom()
        }
    }
}
