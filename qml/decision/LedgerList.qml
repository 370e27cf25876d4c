// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// For and against: a line a consideration, its bar on the side of the size it speaks for.
Column {
    id: ledgerList
    required property LedgerModel ledger
    required property MeaningStrip strip
    readonly property bool paired: ledger.besideTitle
    property bool weighing: false
    property bool all: false
    spacing: Look.hairGap

    InkText {
        visible: !ledgerList.paired
        width: parent.width
        text: qsTr("The longer a bar, the more speaks against.")
        font.pixelSize: Look.small
        color: Look.soft
    }
    SideTitles {
        objectName: "sides"
        visible: ledgerList.paired
        width: parent.width
        shownName: ledgerList.ledger.shownTitle
        besideName: ledgerList.ledger.besideTitle
        mirrored: true
    }
    MeantList {
        id: lineList
        objectName: "ledger"
        lines: repeater
        width: parent.width
        Accessible.name: qsTr("For and against")
        Repeater {
            id: repeater
            model: ledgerList.ledger
            LedgerLine {
                list: lineList
                strip: ledgerList.strip
                ledger: ledgerList.ledger
                paired: ledgerList.paired
                weighing: ledgerList.weighing
                visible: !quiet || ledgerList.all || ledgerList.weighing
                width: lineList.width
            }
        }
    }
    InkText {
        objectName: "rides"
        visible: text
        width: parent.width
        topPadding: Look.hairGap
        text: ledgerList.ledger.rides
        font.pixelSize: Look.small
    }
    Flow {
        width: parent.width
        topPadding: Look.hairGap
        spacing: Look.smallGap
        Chip {
            objectName: "weigh"
            text: qsTr("Weigh it otherwise")
            hint: qsTr("How much each of these counts")
            checked: ledgerList.weighing
            onToggled: ledgerList.weighing = checked
        }
        Chip {
            objectName: "weightsAsUsual"
            visible: ledgerList.ledger.weightsChanged
            checkable: false
            text: qsTr("Weights as usual")
            onClicked: ledgerList.ledger.resetWeights()
        }
        Chip {
            objectName: "allLines"
            visible: ledgerList.ledger.quietCount > 0 && !ledgerList.weighing
            text: qsTr("%n that decide nothing", "lines of for and against", ledgerList.ledger.quietCount)
            checked: ledgerList.all
            onToggled: ledgerList.all = checked
        }
    }
}
