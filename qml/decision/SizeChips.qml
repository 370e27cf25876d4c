// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// Every size, to choose the one that is drawn whole or the one beside it. Left and right move along.
Item {
    id: chips
    required property SizesModel sizes
    property bool beside: false
    property string label
    property real labelWidth: words.implicitWidth // as wide as its neighbour's
    readonly property real wordsWidth: words.implicitWidth
    readonly property real chipHeight: Math.round(Look.control * 0.86)

    implicitHeight: flow.height
    Accessible.role: Accessible.Grouping
    Accessible.name: label

    SizeSwatch {
        id: swatch
        beside: chips.beside
        y: Math.round((chips.chipHeight - height) / 2)
    }
    InkText {
        id: words
        x: swatch.width + Look.smallGap
        y: Math.round((chips.chipHeight - implicitHeight) / 2)
        text: chips.label
        font.pixelSize: Look.small
        color: Look.soft
        wrapMode: Text.NoWrap
        Accessible.ignored: true
    }
    Flow {
        id: flow
        x: words.x + chips.labelWidth + Look.smallGap
        width: chips.width - x
        spacing: Look.hairGap
        Repeater {
            id: repeater
            model: chips.sizes
            RadioChip {
                id: chip
                required property int index
                required property string name
                required property string mark
                required property string spoken
                required property bool broken
                required property bool shown
                required property bool beside
                readonly property bool current: chips.beside ? beside : shown
                objectName: (chips.beside ? "beside_" : "shown_") + name
                text: mark && !chips.beside ? name + " " + mark : name
                hint: spoken
                iconName: broken ? "hazard" : ""
                checked: current
                width: Math.min(implicitWidth, flow.width)
                clip: implicitWidth > flow.width
                activeFocusOnTab: current || activeFocus
                Accessible.name: chips.label + ": " + spoken
                onClicked: chips.choose(index)
                Keys.onLeftPressed: chips.move(index - 1)
                Keys.onRightPressed: chips.move(index + 1)
            }
        }
    }

    function choose(index: int) {
        if (beside)
            sizes.putBeside(index)
        else
            sizes.show(index)
    }
    function move(to: int) {
        const chip = repeater.itemAt(to)
        if (!chip)
            return
        chip.forceActiveFocus(Qt.TabFocusReason)
        choose(to)
    }
}
