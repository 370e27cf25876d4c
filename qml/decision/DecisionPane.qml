// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import Tripoise

// The right column: which size, how sure, why, how it is set up.
FocusScope {
    id: pane
    required property Session session
    readonly property alias decision: decision
    readonly property bool decided: decision.state === DecisionModel.Decided

    function takeFocus() {
        title.forceActiveFocus(Qt.TabFocusReason)
    }

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Decision")
    Keys.onPressed: event => {
        const page = scroll.height - 3 * Look.wideGap
        if (event.key === Qt.Key_PageDown)
            scroll.turn(page)
        else if (event.key === Qt.Key_PageUp)
            scroll.turn(-page)
        else if (event.key === Qt.Key_C && event.modifiers === Qt.ControlModifier)
            decision.copy()
        else
            return
        event.accepted = true
    }

    DecisionModel { id: decision; session: pane.session }
    SizesModel { id: sizes; session: pane.session }
    LedgerModel { id: ledger; session: pane.session }
    SetupModel { id: setup; session: pane.session }
    UsesModel { id: uses; session: pane.session }
    ChecksModel { id: checks; session: pane.session }

    Scroll {
        id: scroll
        objectName: "decisionScroll"
        anchors { left: parent.left; right: parent.right; top: parent.top; bottom: strip.top }
        contentHeight: page.implicitHeight + 2 * Look.gap

        function turn(by: real) {
            contentY = Math.max(0, Math.min(contentY + by, contentHeight - height))
        }

        Column { // not a layout: what folds would be laid out twice
            id: page
            x: Look.gap
            y: Look.gap
            width: scroll.width - 2 * Look.gap
            spacing: Look.gap
            opacity: pane.session.busy ? 0.45 : 1

            DecisionTitle {
                id: title
                objectName: "decisionTitle"
                decision: decision
                caption: pane.session.busy ? qsTr("Working it out…")
                       : pane.decided ? qsTr("Advised") : qsTr("No decision yet")
                width: page.width
            }
            InkText {
                objectName: "weightsNote"
                visible: text && pane.decided
                text: ledger.weightsNote
                font.italic: true
                width: page.width
            }
            ToldList {
                objectName: "lacks"
                visible: decision.lacks.length > 1
                items: decision.lacks.slice(1)
                width: page.width
            }
            InkText {
                visible: decision.state === DecisionModel.Lacking
                text: qsTr("The decision stands here as soon as it can be made.")
                color: Look.soft
                width: page.width
            }
            Column {
                visible: sizes.count > 1
                spacing: Look.hairGap
                width: page.width
                SizeChips {
                    objectName: "shownSizes"
                    label: qsTr("Drawn")
                    sizes: sizes
                    width: parent.width
                }
                SizeChips {
                    objectName: "besideSizes"
                    label: qsTr("Beside it")
                    beside: true
                    sizes: sizes
                    width: parent.width
                }
            }
            ToldList {
                objectName: "reasons"
                visible: pane.decided && items.length > 0
                heading: decision.reasons.heading
                items: decision.reasons.items
                width: page.width
            }
            ToldList {
                objectName: "givenUp"
                heading: decision.givenUp.heading
                items: decision.givenUp.items
                width: page.width
            }
            ToldList {
                objectName: "contrast"
                heading: decision.contrast.heading
                items: decision.contrast.items
                width: page.width
            }
            ToldList {
                objectName: "change"
                heading: decision.change.heading
                items: decision.change.items
                width: page.width
            }
            Hairline { Layout.fillWidth: true }

            ColumnLayout {
                visible: pane.decided
                spacing: 0
                width: page.width
                Layout.topMargin: -Look.gap

                Fold {
                    objectName: "foldLedger"
                    title: qsTr("For and against")
                    visible: ledger.count > 0
                    Layout.fillWidth: true
                    LedgerList {
                        id: ledgerList
                        objectName: "ledgerList"
                        ledger: ledger
                        strip: strip
                        shownName: sizes.shownName
                        besideName: sizes.besideName
                        Layout.fillWidth: true
                    }
                }
                Fold {
                    objectName: "foldSetup"
                    title: qsTr("Set it up")
                    summary: setup.differences
                    Layout.fillWidth: true
                    SetupGrid {
                        objectName: "setup"
                        name: qsTr("Set it up")
                        table: setup
                        strip: strip
                        Layout.fillWidth: true
                    }
                    InkText {
                        visible: text
                        text: setup.differences
                        Layout.fillWidth: true
                    }
                    ToldList {
                        objectName: "today"
                        heading: decision.today.heading
                        items: decision.today.items
                        Layout.fillWidth: true
                    }
                }
                Fold {
                    objectName: "foldUses"
                    title: qsTr("One frame, two kinds of riding")
                    summary: uses.hand
                    open: false
                    Layout.fillWidth: true
                    UsesSection {
                        objectName: "uses"
                        uses: uses
                        strip: strip
                        Layout.fillWidth: true
                    }
                }
                Fold {
                    objectName: "foldChecks"
                    title: qsTr("Look at these")
                    summary: checks.summary
                    Layout.fillWidth: true
                    ChecksList {
                        objectName: "checks"
                        checks: checks
                        Layout.fillWidth: true
                    }
                }
                Fold {
                    objectName: "foldMore"
                    title: qsTr("More")
                    summary: qsTr("Cranks, published rules, the frame asked for")
                    open: false
                    Layout.fillWidth: true
                    ToldList {
                        objectName: "asked"
                        heading: decision.asked.heading
                        items: decision.asked.items
                        Layout.fillWidth: true
                    }
                    ToldList {
                        objectName: "cranks"
                        heading: decision.cranks.heading
                        items: decision.cranks.items
                        Layout.fillWidth: true
                    }
                    ToldList {
                        objectName: "rules"
                        heading: decision.rules.heading
                        items: decision.rules.items
                        Layout.fillWidth: true
                    }
                }
            }
            ChecksList { // what stands in the way, before there is a decision
                visible: decision.state === DecisionModel.NothingFits
                checks: checks
                width: page.width
            }
            Fold {
                id: cautionsFold
                objectName: "foldCautions"
                title: qsTr("Cautions")
                summary: qsTr("What every advice is given under")
                open: false
                width: page.width
                Layout.topMargin: -Look.gap
                ToldList {
                    objectName: "cautions"
                    items: decision.cautions
                    Layout.fillWidth: true
                }
            }
            InkButton {
                objectName: "copyDecision"
                visible: pane.decided
                text: qsTr("Copy the decision as text")
                enabled: decision.canCopy
                hint: qsTr("Ctrl+C in this column")
                onClicked: decision.copy()
            }
        }
    }
    MeaningStrip {
        id: strip
        objectName: "strip"
        standing: decision.cautions[0] ?? ""
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        anchors.leftMargin: Look.gap
        anchors.rightMargin: Look.gap
        lines: (width > 340 * Look.textScale ? 3 : width > 240 * Look.textScale ? 4 : 5) + (ledgerList.weighing ? 2 : 0)
    }
}
