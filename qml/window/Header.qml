// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Tripoise

// Above everything: which fitting this is, and what can be done with it.
Item {
    id: header
    required property Session session
    required property Documents documents
    required property Preferences preferences
    required property WindowKeys keys
    signal deleteAsked()
    signal aboutAsked()

    implicitHeight: Look.control + 2 * Look.hairGap + 2

    RowLayout {
        anchors.fill: parent
        anchors.leftMargin: Look.smallGap
        anchors.rightMargin: Look.smallGap
        spacing: Look.hairGap

        InkButton {
            objectName: "fittingMenu"
            bare: true
            text: qsTr("Fitting")
            Accessible.role: Accessible.ButtonMenu
            onClicked: fittingMenu.popup(this, 0, height)
            InkMenu {
                id: fittingMenu
                InkMenuItem { text: qsTr("New"); keys: header.keys.textOf("Ctrl+N"); onTriggered: header.keys.newAsked() }
                InkMenuItem { text: qsTr("Fittings…"); keys: header.keys.textOf("Ctrl+O"); onTriggered: header.keys.openAsked() }
                InkMenuItem { text: qsTr("Save"); keys: header.keys.textOf("Ctrl+S"); onTriggered: header.keys.saveAsked() }
                InkMenuItem { text: qsTr("Export…"); keys: header.keys.textOf("Ctrl+Shift+S"); onTriggered: header.keys.saveAsAsked() }
                T.MenuSeparator { contentItem: Hairline {} padding: Look.hairGap }
                InkMenuItem { objectName: "sheet"; text: qsTr("Set-up sheet…"); keys: header.keys.textOf("Ctrl+P"); onTriggered: header.keys.sheetAsked() }
                T.MenuSeparator { contentItem: Hairline {} padding: Look.hairGap }
                InkMenuItem { objectName: "deleteRider"; text: qsTr("Delete this rider…"); onTriggered: header.deleteAsked() }
            }
        }
        InkButton {
            objectName: "viewMenu"
            bare: true
            text: qsTr("View")
            Accessible.role: Accessible.ButtonMenu
            onClicked: viewMenu.popup(this, 0, height)
            InkMenu {
                id: viewMenu
                InkMenuItem { text: qsTr("Millimetres"); checkable: true; checked: header.preferences.units === "metric"; onTriggered: header.preferences.units = "metric" }
                InkMenuItem { text: qsTr("Inches for the body and the hands"); checkable: true; checked: header.preferences.units === "imperial"; onTriggered: header.preferences.units = "imperial" }
                T.MenuSeparator { contentItem: Hairline {} padding: Look.hairGap }
                InkMenuItem { text: qsTr("Sheets on A4"); checkable: true; checked: header.preferences.paper === "a4"; onTriggered: header.preferences.paper = "a4" }
                InkMenuItem { text: qsTr("Sheets on Letter"); checkable: true; checked: header.preferences.paper === "letter"; onTriggered: header.preferences.paper = "letter" }
                T.MenuSeparator { contentItem: Hairline {} padding: Look.hairGap }
                InkMenuItem { text: qsTr("Ink on paper"); checkable: true; checked: !Look.night; onTriggered: header.preferences.night = false }
                InkMenuItem { text: qsTr("Chalk on slate"); checkable: true; checked: Look.night; onTriggered: header.preferences.night = true }
                T.MenuSeparator { contentItem: Hairline {} padding: Look.hairGap }
                InkMenuItem { text: qsTr("Larger letters"); keys: header.keys.textOf("Ctrl++"); onTriggered: header.preferences.largerText() }
                InkMenuItem { text: qsTr("Smaller letters"); keys: header.keys.textOf("Ctrl+-"); onTriggered: header.preferences.smallerText() }
                T.MenuSeparator { contentItem: Hairline {} padding: Look.hairGap }
                InkMenuItem { objectName: "about"; text: qsTr("About Tripoise"); onTriggered: header.aboutAsked() }
                T.MenuSeparator { contentItem: Hairline {} padding: Look.hairGap }
                InkMenuItem { text: "English"; checkable: true; checked: header.preferences.language === "en"; onTriggered: header.preferences.language = "en" }
                InkMenuItem { text: "Deutsch"; checkable: true; checked: header.preferences.language === "de"; onTriggered: header.preferences.language = "de" }
            }
        }
        InkButton {
            objectName: "undo"
            bare: true
            iconName: "undo"
            enabled: header.session.canUndo
            hint: enabled ? qsTr("Undo: %1").arg(header.session.undoText) : qsTr("Undo")
            onClicked: header.session.undo()
        }
        InkButton {
            objectName: "redo"
            bare: true
            iconName: "redo"
            enabled: header.session.canRedo
            hint: enabled ? qsTr("Redo: %1").arg(header.session.redoText) : qsTr("Redo")
            onClicked: header.session.redo()
        }
        InkText {
            objectName: "fittingTitle"
            text: header.documents.title
            font.bold: true
            horizontalAlignment: Text.AlignHCenter
            elide: Text.ElideMiddle
            wrapMode: Text.NoWrap
            Layout.fillWidth: true
        }
        InkButton {
            objectName: "nightButton"
            bare: true
            iconName: Look.night ? "day" : "night"
            hint: Look.night ? qsTr("Ink on paper") : qsTr("Chalk on slate")
            onClicked: header.preferences.toggleNight()
        }
        InkButton {
            objectName: "keysButton"
            bare: true
            text: qsTr("Keys")
            onClicked: header.keys.keysAsked()
        }
        InkButton {
            objectName: "riderButton"
            strong: true
            text: qsTr("Show the rider")
            hint: header.keys.textOf("F5")
            onClicked: header.keys.riderAsked()
        }
    }
}
