// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import Tripoise

// Every size, to choose the one that is drawn whole or the one beside it. Left and right move along.
RowLayout {
    id: chips
    required property SizesModel sizes
    property bool beside: false
    property string label
    spacing: Look.smallGap
    Accessible.role: Accessible.Grouping
    Accessible.name: label

    SizeSwatch {
        beside: chips.beside
        Layout.alignment: Qt.AlignTop
        Layout.topMargin: Math.round((Look.control * 0.86 - implicitHeight) / 2)
    }
    InkText {
        text: chips.label
        font.pixelSize: Look.small
        color: Look.soft
        wrapMode: Text.NoWrap
        Layout.alignment: Qt.AlignTop
        Layout.preferredWidth: Math.round(58 * Look.textScale)
        Layout.topMargin: Math.round((Look.control * 0.86 - implicitHeight) / 2)
        Accessible.ignored: true
    }
    Flow {
        Layout.fillWidth: true
        spacing: Look.hairGap
        Repeater {
            id: repeater
            model: chips.sizes
            Chip {
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
                checkable: false
                checked: current
                activeFocusOnTab: current
                Accessible.role: Accessible.RadioButton
                Accessible.name: chips.label + ": " + spoken
                Accessible.checkable: true
                Accessible.checked: current
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
        choose(to)
        chip.forceActiveFocus(Qt.TabFocusReason)
    }
}
