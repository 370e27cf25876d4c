// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import Tripoise

// The stem question: one size, two kinds of riding, two set-ups.
ColumnLayout {
    id: section
    required property UsesModel uses
    required property MeaningStrip strip
    spacing: Look.smallGap

    component Pick: ColumnLayout {
        property alias name: caption.text
        property int use
        signal picked(int use)
        spacing: Look.hairGap
        visible: section.uses.uses.length > 2
        InkText {
            id: caption
            font.pixelSize: Look.small
            color: Look.soft
        }
        Flow {
            spacing: Look.hairGap
            Layout.fillWidth: true
            Repeater {
                model: section.uses.uses
                Chip {
                    required property string modelData
                    required property int index
                    text: modelData
                    checkable: false
                    checked: index === parent.parent.use
                    Accessible.role: Accessible.RadioButton
                    Accessible.name: caption.text + ": " + text
                    Accessible.checkable: true
                    Accessible.checked: checked
                    onClicked: parent.parent.picked(index)
                }
            }
        }
    }

    InkText {
        objectName: "hand"
        text: section.uses.hand
        font.bold: section.uses.secondUse >= 0
        Layout.fillWidth: true
    }
    InkText {
        visible: text
        text: section.uses.differences
        Layout.fillWidth: true
    }
    Pick {
        name: qsTr("One kind of riding")
        use: section.uses.firstUse
        onPicked: use => section.uses.chooseFirst(use)
        Layout.fillWidth: true
    }
    Pick {
        name: qsTr("The other")
        use: section.uses.secondUse
        onPicked: use => section.uses.chooseSecond(use)
        Layout.fillWidth: true
    }
    SetupGrid {
        table: section.uses
        strip: section.strip
        name: section.uses.heading
        visible: section.uses.count > 0
        Layout.fillWidth: true
    }
}
