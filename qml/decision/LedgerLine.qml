// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// One consideration: its value on either size, and how much it speaks for one of them.
MeantRow {
    id: line
    required property int index
    required property string name
    required property string shownValue
    required property string besideValue
    required property real forShown
    required property real forBeside
    required property real against
    required property string better
    required property string remark
    required property bool quiet
    required property string about
    required property string aboutWeighing
    required spoken
    required property real factor
    required property string weight
    required property LedgerModel ledger
    property bool paired: true
    property bool weighing: false

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
                width: parent.width - (tag.text ? tag.width + Look.smallGap : 0)
                text: line.name
                Accessible.ignored: true
            }
            InkText {
                id: tag
                anchors.right: parent.right
                anchors.baseline: title.baseline
                text: line.weight
                font.pixelSize: Look.small
                font.italic: true
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
        }
        Item {
            width: parent.width
            height: Math.max(mine.implicitHeight, theirs.visible ? theirs.implicitHeight : 0)
            Value {
                id: mine
                objectName: "shownValue"
                width: line.paired ? (parent.width - Look.smallGap) / 2 : parent.width
                ticked: line.better === "shown"
                text: ticked ? "✓ " + line.shownValue : line.shownValue
            }
            Value {
                id: theirs
                objectName: "besideValue"
                visible: line.paired
                anchors.right: parent.right
                width: (parent.width - Look.smallGap) / 2
                horizontalAlignment: Text.AlignRight
                ticked: line.better === "beside"
                text: ticked ? line.besideValue + " ✓" : line.besideValue
                color: Look.otherText
            }
        }
        LedgerBar {
            objectName: "bar"
            width: parent.width
            paired: line.paired
            forShown: line.forShown
            forBeside: line.forBeside
            against: line.against
        }
        InkText {
            objectName: "remark"
            visible: text
            width: parent.width
            horizontalAlignment: line.better === "beside" ? Text.AlignRight : Text.AlignLeft
            text: line.remark
            font.pixelSize: Look.small
            font.italic: true
            color: line.better === "beside" ? Look.otherText : Look.ink
            Accessible.ignored: true
        }
        Later {
            wanted: line.weighing
            width: parent.width
            Choice {
                topPadding: Look.hairGap
                bottomPadding: Look.hairGap
                name: line.name
                options: line.ledger.weightSteps
                value: line.factor
                onChosen: factor => line.ledger.setWeight(line.index, factor)
            }
        }
    }
}
