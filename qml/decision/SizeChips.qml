// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// Every size, to choose the one that is drawn whole, the one beside it or the one that is built.
// Left and right move along.
Item {
    id: chips
    required property SizesModel sizes
    property string of: "shown" // or "beside", "chosen"
    readonly property bool choosing: of === "chosen"
    readonly property bool anyChosen: {
        let any = false
        for (let i = 0; i < repeater.count; ++i)
            any = repeater.itemAt(i)?.current || any
        return any
    }
    property string label
    property real labelWidth: words.implicitWidth // as wide as its neighbour's
    readonly property real wordsWidth: words.implicitWidth
    readonly property alias indent: words.x
    readonly property alias chipsX: flow.x
    readonly property real chipHeight: Math.round(Look.control * 0.86)

    implicitHeight: flow.height
    Accessible.role: Accessible.Grouping
    Accessible.name: label

    SizeSwatch {
        id: swatch
        visible: !chips.choosing
        beside: chips.of === "beside"
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
        RadioChip {
            id: none
            objectName: "chosen_none"
            visible: chips.choosing
            text: qsTr("Not yet")
            checked: !chips.anyChosen
            activeFocusOnTab: checked || activeFocus
            Accessible.name: chips.label + ": " + text
            onClicked: chips.choose(-1)
            Keys.onRightPressed: chips.move(0)
        }
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
                required property bool chosen
                readonly property bool current: chips.choosing ? chosen : chips.of === "beside" ? beside : shown
                objectName: chips.of + "_" + name
                text: mark && chips.of === "shown" ? name + " " + mark : name
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

    function takeFocus() {
        for (let i = 0; i < repeater.count; ++i)
            if (repeater.itemAt(i).current)
                return repeater.itemAt(i).forceActiveFocus(Qt.TabFocusReason)
        none.forceActiveFocus(Qt.TabFocusReason)
    }
    function choose(index: int) {
        if (choosing)
            sizes.choose(index)
        else if (of === "beside")
            sizes.putBeside(index)
        else
            sizes.show(index)
    }
    function move(to: int) {
        const chip = to < 0 && choosing ? none : repeater.itemAt(to)
        if (!chip)
            return
        chip.forceActiveFocus(Qt.TabFocusReason)
        choose(to)
    }
}
