// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Tripoise

// Asks before another fitting takes the place of one that was not saved.
Sheet {
    id: sheet
    required property Documents documents
    property var then: null
    signal saveAsked()

    function ask(next: var) {
        then = next
        if (documents.dirty)
            open()
        else
            proceed()
    }
    function proceed() {
        const next = then
        then = null
        close()
        if (next)
            next()
    }

    closePolicy: T.Popup.CloseOnEscape
    onOpened: saveButton.forceActiveFocus(Qt.TabFocusReason)
    onClosed: if (!picking) then = null
    property bool picking: false

    contentItem: ColumnLayout {
        spacing: Look.wideGap
        InkText {
            text: qsTr("“%1” has changes that were not saved.").arg(sheet.documents.name)
            font.pixelSize: Look.large
            Layout.maximumWidth: 460
            Layout.fillWidth: true
        }
        RowLayout {
            spacing: Look.smallGap
            InkButton {
                id: saveButton
                objectName: "unsavedSave"
                strong: true
                text: qsTr("Save")
                onClicked: {
                    sheet.picking = true
                    sheet.close()
                    sheet.saveAsked()
                    sheet.picking = false
                }
            }
            InkButton {
                objectName: "unsavedDrop"
                text: qsTr("Leave it")
                onClicked: sheet.proceed()
            }
            InkButton {
                objectName: "unsavedBack"
                text: qsTr("Back")
                onClicked: sheet.close()
            }
        }
    }
}
