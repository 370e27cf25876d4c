// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import Tripoise

// For and against: a line a consideration, its two bars meeting in the middle.
ColumnLayout {
    id: ledgerList
    required property LedgerModel ledger
    required property MeaningStrip strip
    property string shownName
    property string besideName
    property bool weighing: false
    property bool all: false
    spacing: Look.hairGap

    InkText {
        text: ledgerList.besideName ? qsTr("The longer a bar, the more speaks against. The better value has a tick.")
                                    : qsTr("The longer a bar, the more speaks against.")
        font.pixelSize: Look.small
        color: Look.soft
        Layout.fillWidth: true
    }
    SideTitles {
        shownName: ledgerList.shownName
        besideName: ledgerList.besideName
        mirrored: true
        Layout.fillWidth: true
    }
    MeantList {
        id: lineList
        objectName: "ledger"
        lines: repeater
        Layout.fillWidth: true
        Accessible.name: qsTr("For and against")
        Repeater {
            id: repeater
            model: ledgerList.ledger
            LedgerLine {
                list: lineList
                strip: ledgerList.strip
                ledger: ledgerList.ledger
                paired: ledgerList.besideName
                weighing: ledgerList.weighing
                visible: !quiet || ledgerList.all || ledgerList.weighing
                width: lineList.width
            }
        }
    }
    Flow {
        spacing: Look.smallGap
        Layout.fillWidth: true
        Layout.topMargin: Look.hairGap
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
            text: qsTr("%n that weigh on neither", "lines of for and against", ledgerList.ledger.quietCount)
            checked: ledgerList.all
            onToggled: ledgerList.all = checked
        }
    }
}
