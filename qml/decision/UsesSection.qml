// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// The stem question: one size, two kinds of riding, two set-ups.
Column {
    id: section
    required property UsesModel uses
    required property MeaningStrip strip
    property bool oneOfSeveral: false // sizes, so that it wants saying which
    spacing: Look.smallGap

    component Pick: Column {
        id: pick
        property alias name: caption.text
        property int use
        signal picked(int use)
        width: parent.width
        spacing: Look.hairGap
        visible: section.uses.uses.length > 2
        Accessible.role: Accessible.Grouping
        Accessible.name: name
        InkText {
            id: caption
            font.pixelSize: Look.small
            color: Look.soft
        }
        Flow {
            width: parent.width
            spacing: Look.hairGap
            Repeater {
                id: options
                model: pick.visible ? section.uses.uses.length : 0 // chips that stay are not made anew
                RadioChip {
                    required property int index
                    text: section.uses.uses[index] ?? ""
                    checked: index === pick.use
                    activeFocusOnTab: checked || activeFocus
                    Accessible.name: caption.text + ": " + text
                    onClicked: pick.picked(index)
                    Keys.onLeftPressed: pick.move(index - 1)
                    Keys.onRightPressed: pick.move(index + 1)
                }
            }
        }
        function move(to: int) {
            const chip = options.itemAt(to)
            if (!chip)
                return
            chip.forceActiveFocus(Qt.TabFocusReason)
            picked(to)
        }
    }

    InkText {
        objectName: "whichSize"
        visible: section.oneOfSeveral && section.uses.count > 0
        width: parent.width
        text: section.uses.heading
        font.pixelSize: Look.small
        color: Look.soft
    }
    InkText {
        objectName: "hand"
        width: parent.width
        text: section.uses.hand
        font.bold: section.uses.secondUse >= 0
    }
    InkText {
        visible: text
        width: parent.width
        text: section.uses.differences
    }
    Pick {
        name: qsTr("One kind of riding")
        use: section.uses.firstUse
        onPicked: use => section.uses.chooseFirst(use)
    }
    Pick {
        name: qsTr("The other")
        use: section.uses.secondUse
        onPicked: use => section.uses.chooseSecond(use)
    }
    SetupGrid {
        width: parent.width
        table: section.uses
        strip: section.strip
        name: section.uses.heading
        visible: section.uses.count > 0
    }
}
