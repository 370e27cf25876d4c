// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// Two set-ups side by side; what differs is bold and marked.
Column {
    id: grid
    required property SetupTable table
    required property MeaningStrip strip
    property string name
    readonly property bool paired: table.secondTitle
    readonly property bool roomy: !paired || width > 400 * Look.textScale
    readonly property real labelWidth: roomy ? Math.round(width * (paired ? 0.36 : 0.5)) : width
    readonly property real valueWidth: roomy ? (width - labelWidth) / 2 : width / 2
    spacing: Look.hairGap

    SideTitles {
        visible: grid.paired
        x: grid.roomy ? grid.labelWidth : 0
        width: parent.width - x
        shownName: grid.table.firstTitle
        besideName: grid.table.secondTitle
    }
    MeantList {
        id: lineList
        objectName: "lines"
        lines: repeater
        width: parent.width
        Accessible.name: grid.name
        Repeater {
            id: repeater
            model: grid.table
            SetupLine {
                list: lineList
                strip: grid.strip
                width: lineList.width
                paired: grid.paired
                roomy: grid.roomy
                labelWidth: grid.labelWidth
                valueWidth: grid.valueWidth
            }
        }
    }
}
