// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// The right column: which size, how sure, why, how it is set up.
FocusScope {
    id: pane
    required property Session session
    property Preferences preferences // where what is folded is remembered
    property bool weighing: false
    readonly property alias decision: decision
    readonly property alias meaningStrip: strip
    readonly property alias checks: checks
    readonly property alias ledger: ledger
    signal lookFromAbove()
    readonly property bool decided: decision.state === DecisionModel.Decided

    function takeFocus() {
        title.forceActiveFocus(Qt.TabFocusReason)
    }

    /// For and against another size; asked again, the next one.
    function whyNot() {
        if (!decided || ledger.count === 0)
            return
        if (against.open && against.heading.activeFocus && sizes.count > 2)
            sizes.putNextBeside()
        against.turn(true)
        against.heading.forceActiveFocus(Qt.TabFocusReason)
    }
    function whatItCosts() {
        if (decided)
            choice.takeFocus()
    }

    component Kept: Fold {
        preferences: pane.preferences
        open: false
        width: parent?.width ?? 0
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
    UsesModel { id: twoUses; session: pane.session }
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
            ToldList {
                objectName: "firstAnswer"
                visible: decision.state === DecisionModel.Lacking && items.length > 0
                heading: decision.asked.heading
                items: decision.asked.items
                width: page.width
            }
            Column {
                visible: sizes.count > 1
                spacing: Look.hairGap
                width: page.width
                SizeChips {
                    id: shownSizes
                    objectName: "shownSizes"
                    label: qsTr("Drawn")
                    labelWidth: Math.max(wordsWidth, besideSizes.wordsWidth, choice.wordsWidth)
                    sizes: sizes
                    width: parent.width
                }
                SizeChips {
                    id: besideSizes
                    objectName: "besideSizes"
                    label: qsTr("Beside it")
                    labelWidth: shownSizes.labelWidth
                    of: "beside"
                    sizes: sizes
                    width: parent.width
                }
            }
            ChoiceSection {
                id: choice
                objectName: "choice"
                visible: pane.decided
                session: pane.session
                sizes: sizes
                labelWidth: shownSizes.labelWidth
                width: page.width
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
            InkText {
                objectName: "toOrder"
                visible: text
                text: decision.toOrder
                width: page.width
                lineHeight: 1.12
            }
            ChecksList { // before there is a decision, all that stands in the way
                objectName: "checks"
                visible: pane.decided || decision.state === DecisionModel.NothingFits
                which: pane.decided ? "first" : "all"
                checks: pane.checks
                width: page.width
            }
            ToldList { // the first of all stands in the strip
                objectName: "cautions"
                visible: pane.decided && items.length > 0
                items: decision.cautions.slice(1)
                width: page.width
            }
            Column {
                width: page.width
                Hairline { width: parent.width }
                Column {
                    visible: pane.decided
                    width: parent.width
                    Column { id: usesFirst; width: parent.width }
                    Kept {
                        id: against
                        objectName: "foldLedger"
                        key: "ledger"
                        title: qsTr("For and against")
                        summary: ledger.weightsNote || qsTr("Every consideration, and how much it counts")
                        visible: ledger.count > 0
                        Later {
                            wanted: against.open
                            width: parent.width
                            LedgerList {
                                objectName: "ledgerList"
                                ledger: pane.ledger
                                strip: pane.meaningStrip
                                onWeighingChanged: pane.weighing = weighing
                            }
                        }
                    }
                    Kept {
                        objectName: "foldContrast"
                        key: "contrast"
                        title: qsTr("To see the difference")
                        summary: decision.contrast.items[0] ?? ""
                        visible: decision.contrast.items.length > 0
                        ToldList {
                            objectName: "contrast"
                            items: decision.contrast.items
                            width: parent.width
                        }
                        ToldList {
                            objectName: "change"
                            heading: decision.change.heading
                            items: decision.change.items
                            width: parent.width
                        }
                    }
                    Kept {
                        id: setting
                        objectName: "foldSetup"
                        key: "setup"
                        title: qsTr("Set it up")
                        summary: setup.differences
                        Later {
                            wanted: setting.open
                            width: parent.width
                            Column {
                                spacing: Look.smallGap
                                SetupGrid {
                                    objectName: "setup"
                                    name: qsTr("Set it up")
                                    table: setup
                                    strip: pane.meaningStrip
                                    width: parent.width
                                }
                                InkText {
                                    visible: text
                                    width: parent.width
                                    text: setup.differences
                                }
                                ToldList {
                                    objectName: "today"
                                    heading: decision.today.heading
                                    items: decision.today.items
                                    width: parent.width
                                }
                            }
                        }
                    }
                    Kept {
                        id: ride
                        objectName: "foldRide"
                        key: "ride"
                        title: qsTr("How it rides")
                        summary: qsTr("Toe room, steadiness, weight on the wheels")
                        Later {
                            wanted: ride.open
                            width: parent.width
                            RideSection {
                                objectName: "ride"
                                session: pane.session
                                strip: pane.meaningStrip
                                onLookFromAbove: pane.lookFromAbove()
                            }
                        }
                    }
                    Column { id: usesLater; width: parent.width }
                    Fold { // with one frame it is the question, and stands first
                        id: kinds
                        objectName: "foldUses"
                        parent: sizes.count < 2 ? usesFirst : usesLater
                        title: qsTr("One frame, two kinds of riding")
                        summary: twoUses.hand
                        open: sizes.count < 2
                        width: page.width
                        Later {
                            wanted: kinds.open
                            width: parent.width
                            UsesSection {
                                objectName: "uses"
                                uses: twoUses
                                strip: pane.meaningStrip
                                oneOfSeveral: sizes.count > 1
                            }
                        }
                    }
                    Kept {
                        objectName: "foldChecks"
                        key: "checks"
                        title: qsTr("Look at these as well")
                        summary: checks.summary
                        visible: checks.laterCount > 0
                        ChecksList {
                            objectName: "laterChecks"
                            which: "later"
                            checks: pane.checks
                            width: parent.width
                        }
                    }
                    Kept {
                        id: more
                        objectName: "foldMore"
                        key: "more"
                        title: qsTr("More")
                        summary: qsTr("Cranks, published rules, the frame asked for, sources")
                        Later {
                            wanted: more.open
                            width: parent.width
                            Column {
                                spacing: Look.smallGap
                                MeantTold {
                                    objectName: "asked"
                                    section: decision.asked
                                    strip: pane.meaningStrip
                                    width: parent.width
                                }
                                MeantTold {
                                    objectName: "cranks"
                                    section: decision.cranks
                                    strip: pane.meaningStrip
                                    width: parent.width
                                }
                                MeantTold {
                                    objectName: "rules"
                                    section: decision.rules
                                    strip: pane.meaningStrip
                                    width: parent.width
                                }
                                ToldList {
                                    objectName: "sources"
                                    heading: decision.sources.heading
                                    items: decision.sources.items
                                    width: parent.width
                                }
                            }
                        }
                    }
                }
                Kept {
                    objectName: "foldCautions"
                    key: "cautions"
                    title: qsTr("Other cautions")
                    summary: qsTr("What every advice is given under")
                    ToldList {
                        objectName: "otherCautions"
                        items: decision.otherCautions
                        width: parent.width
                    }
                }
            }
            InkButton {
                objectName: "copyDecision"
                visible: pane.decided
                text: qsTr("Copy the decision as text")
                enabled: decision.canCopy || !pane.session.busy // a moment is not worth a flicker
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
        lines: (width > 340 * Look.textScale ? 3 : width > 240 * Look.textScale ? 4 : 5) + (weighing ? 2 : 0)
    }
}
