// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// The left column: rider, riding, frames, the bicycle, box of parts, the bike ridden today.
Item {
    id: pane
    required property Session session
    required property Documents documents
    required property Preferences preferences
    signal sheetAsked()
    signal tableAsked()
    signal keptAsked()
    signal filePicked(url file)

    function takeFocus() {
        riderSection.open = true
        if (riderSection.firstField)
            riderSection.firstField.forceActiveFocus(Qt.TabFocusReason)
    }
    /// A new fitting begins with the rider's name.
    function beginAnew() {
        riderSection.open = true
        scroll.contentY = 0
        riderSection.nameField.forceActiveFocus(Qt.TabFocusReason)
    }
    function whatIf() { ridingSection.takeShares() }
    function applyPreset(index: int) { ridingSection.applyPreset(index) }

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Brief")

    Scroll {
        id: scroll
        anchors.fill: parent
        contentHeight: column.implicitHeight + Look.wideGap

        Column { // not a layout: what folds would be laid out twice
            id: column
            x: Look.gap // inside what is clipped, so that a focus ring is whole
            width: Math.min(scroll.width - 2 * Look.gap - Look.hairGap, 460 * Look.textScale)
            spacing: Look.hairGap

            RiderSection {
                id: riderSection
                objectName: "riderSection"
                preferences: pane.preferences
                key: "rider"
                session: pane.session
                width: column.width
                onAllMeasured: ridingSection.takeFocus()
                onMeasuring: (quantity, name, datum, howTo, beside) => card.show(quantity, name, datum, howTo, beside)
                onMeasured: card.hide()
            }
            RidingSection {
                id: ridingSection
                objectName: "ridingSection"
                preferences: pane.preferences
                key: "riding"
                session: pane.session
                today: todaySection.today
                width: column.width
            }
            BicycleSection {
                objectName: "bicycleSection"
                preferences: pane.preferences
                key: "bicycle"
                session: pane.session
                width: column.width
            }
            FramesSection {
                objectName: "framesSection"
                preferences: pane.preferences
                key: "frames"
                session: pane.session
                documents: pane.documents
                width: column.width
                onTableAsked: pane.tableAsked()
                onKeptAsked: pane.keptAsked()
                onFilePicked: file => pane.filePicked(file)
            }
            BoxSection {
                objectName: "boxSection"
                preferences: pane.preferences
                key: "box"
                session: pane.session
                documents: pane.documents
                open: false
                width: column.width
            }
            TodaySection {
                id: todaySection
                objectName: "todaySection"
                preferences: pane.preferences
                key: "today"
                session: pane.session
                pictured: key => card.shows(key)
                onMeasuring: (quantity, name, datum, howTo, beside) => card.show(quantity, name, datum, howTo, beside)
                onMeasured: card.hide()
                open: false
                width: column.width
            }
            BuiltSection {
                objectName: "builtSection"
                preferences: pane.preferences
                key: "built"
                session: pane.session
                pictured: key => card.shows(key)
                onMeasuring: (quantity, name, datum, howTo, beside) => card.show(quantity, name, datum, howTo, beside)
                onMeasured: card.hide()
                open: false
                width: column.width
                onSheetAsked: pane.sheetAsked()
            }
            VisitsSection {
                objectName: "visitsSection"
                preferences: pane.preferences
                key: "visits"
                session: pane.session
                open: false
                width: column.width
            }
        }
    }
    MeasuringCard {
        id: card
        x: Math.min(pane.width + Look.hairGap, pane.Window.width - width - Look.gap)
        available: pane.height
        z: 10
    }
}
