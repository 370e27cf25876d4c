// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// The builder's word beside the verdict: which size and set-up are built, why, and what it costs.
Column {
    id: section
    required property Session session
    required property SizesModel sizes
    property real labelWidth
    readonly property alias wordsWidth: chosen.wordsWidth
    spacing: Look.hairGap

    ChoiceModel { id: choice; session: section.session }

    SizeChips {
        id: chosen
        objectName: "chosenSizes"
        label: qsTr("Chosen")
        labelWidth: section.labelWidth
        of: "chosen"
        sizes: section.sizes
        width: parent.width
    }
    Item { // under the sizes
        visible: choice.pulled
        width: parent.width
        height: setups.height
        Accessible.role: Accessible.Grouping
        Accessible.name: words.text
        InkText {
            id: words
            x: chosen.indent
            y: Math.round((setups.height - implicitHeight) / 2)
            text: qsTr("Set-up")
            font.pixelSize: Look.small
            color: Look.soft
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
        Flow {
            id: setups
            x: chosen.chipsX
            width: parent.width - x
            spacing: Look.hairGap
            Repeater {
                id: setupChips
                model: [qsTr("As advised"), qsTr("As pulled")]
                RadioChip {
                    required property int index
                    required property string modelData
                    objectName: index ? "setupPulled" : "setupAdvised"
                    text: modelData
                    checked: choice.own === (index === 1)
                    activeFocusOnTab: checked || activeFocus
                    Accessible.name: words.text + ": " + modelData
                    onClicked: choice.own = index === 1
                    Keys.onLeftPressed: section.moveSetup(0)
                    Keys.onRightPressed: section.moveSetup(1)
                }
            }
        }
    }
    NameEntry {
        objectName: "reason"
        visible: choice.any
        session: section.session
        label: qsTr("Why, in your own words")
        value: choice.reason
        width: parent.width
        onNamed: name => choice.reason = name
    }
    Repeater {
        model: choice.cautions
        HazardLine {
            required property string modelData
            objectName: "choiceCaution"
            text: modelData
            width: section.width
        }
    }
    InkText {
        objectName: "choiceSentence"
        visible: text
        width: parent.width
        text: choice.sentence
        font.bold: true
    }
    ToldList {
        objectName: "choiceCosts"
        visible: choice.against
        heading: choice.against
        plainHeading: true
        items: choice.costs
        width: parent.width
    }
    ToldList {
        objectName: "choiceMoves"
        heading: choice.moved
        plainHeading: true
        items: choice.moves
        width: parent.width
    }

    function takeFocus() { chosen.takeFocus() }
    function moveSetup(to: int) {
        const chip = setupChips.itemAt(to)
        chip.forceActiveFocus(Qt.TabFocusReason)
        choice.own = to === 1
    }
}
