// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// What the line under the pointer or the keys means, always in the same place.
Item {
    id: strip
    property string standing // what is said while nothing is pointed at
    property int lines: 4
    property Item hoveredRow: null
    property Item focusedRow: null
    property string hoveredMeaning
    property string focusedMeaning
    readonly property string text: hoveredRow ? hoveredMeaning : focusedRow ? focusedMeaning : standing
    readonly property bool cut: words.truncated

    function hover(row: Item, meaning: string) {
        hoveredMeaning = meaning
        hoveredRow = row
    }
    function focusOn(row: Item, meaning: string) {
        focusedMeaning = meaning
        focusedRow = row
    }
    function leave(row: Item) {
        if (hoveredRow === row)
            hoveredRow = null
    }
    function focusOff(row: Item) {
        if (focusedRow === row)
            focusedRow = null
    }

    implicitHeight: Math.ceil(lines * metrics.lineSpacing) + 2 * Look.smallGap

    FontMetrics {
        id: metrics
        font.family: Look.family
        font.pixelSize: Look.small
    }
    Hairline { width: parent.width }
    InkText {
        id: words
        objectName: "meaning"
        anchors.fill: parent
        anchors.topMargin: Look.smallGap
        text: strip.text
        font.pixelSize: Look.small
        color: strip.hoveredRow || strip.focusedRow ? Look.ink : Look.soft
        elide: Text.ElideRight
    }
}
