// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// One consideration: its value on either size, and how much it speaks against each.
MeantRow {
    id: line
    required property int index
    required property string name
    required property string shownValue
    required property string besideValue
    required property real shownBar
    required property real besideBar
    required property string better
    required property bool quiet
    required property string about
    required property string aboutWeighing
    required spoken
    required property real factor
    required property string weight
    required property LedgerModel ledger
    property bool paired: true
    property bool weighing: false
    readonly property real half: (width - 1) / 2

    place: index
    meaning: weighing ? aboutWeighing : about
    objectName: "ledger_" + index
    implicitHeight: column.implicitHeight + Look.smallGap
    Keys.onPressed: event => {
        if (event.text === "+" || event.text === "-") {
            if (event.text === "+")
                ledger.heavier(index)
            else
                ledger.lighter(index)
            event.accepted = true
        }
    }

    component Value: InkText {
        property bool ticked
        font.pixelSize: Look.small
        font.bold: ticked
        wrapMode: Text.NoWrap
        elide: Text.ElideRight
        Accessible.ignored: true
    }

    Column {
        id: column
        width: parent.width
        y: Look.hairGap
        spacing: 1
        Item {
            width: parent.width
            height: Math.max(title.implicitHeight, tag.implicitHeight)
            InkText {
                id: title
                width: parent.width - tag.width - Look.smallGap
                text: line.name
                elide: Text.ElideRight
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
            InkText {
                id: tag
                anchors.right: parent.right
                anchors.baseline: title.baseline
                text: line.weight
                font.pixelSize: Look.small
                font.italic: true
                Accessible.ignored: true
            }
        }
        Item {
            width: parent.width
            height: mine.implicitHeight
            Value {
                id: mine
                objectName: "shownValue"
                width: (line.paired ? line.half : line.width) - Look.hairGap
                ticked: line.better === "shown"
                text: ticked ? "✓ " + line.shownValue : line.shownValue
            }
            Value {
                objectName: "besideValue"
                visible: line.paired
                anchors.right: parent.right
                width: line.half - Look.hairGap
                horizontalAlignment: Text.AlignRight
                ticked: line.better === "beside"
                text: ticked ? line.besideValue + " ✓" : line.besideValue
                color: Look.otherText
            }
        }
        Item {
            width: parent.width
            height: Math.round(Look.small * 0.7)
            Hairline { // where nothing speaks against
                x: line.paired ? line.half : 0
                height: parent.height
                color: Look.edge
            }
            Rectangle {
                objectName: "shownBar"
                width: Math.round(line.shownBar * (line.paired ? line.half : line.width))
                height: parent.height
                x: line.paired ? line.half - width : 0
                color: Look.ink
            }
            Hatch {
                objectName: "besideBar"
                visible: line.paired
                width: Math.round(line.besideBar * line.half)
                height: parent.height
                x: line.half + 1
                color: Look.other
            }
        }
        Choice {
            visible: line.weighing
            topPadding: Look.hairGap
            bottomPadding: Look.hairGap
            name: line.name
            options: line.ledger.weightSteps
            value: line.factor
            onChosen: factor => line.ledger.setWeight(line.index, factor)
        }
    }
}
