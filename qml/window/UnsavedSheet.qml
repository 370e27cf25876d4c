// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Tripoise

// Asks before another fitting takes the place of one that was not saved.
Sheet {
    id: sheet
    objectName: "unsaved"
    required property Documents documents
    property var then: null // what waits, and only while this asks or its own save is under way
    property bool saving: false
    signal saveAsked()

    function ask(next: var) {
        saving = false
        then = next
        if (documents.dirty)
            open()
        else
            proceed()
    }
    function proceed() {
        const next = then
        forget()
        close()
        if (next)
            next()
    }

    /// The save did not come about: nothing waits any longer.
    function forget() {
        then = null
        saving = false
    }

    closePolicy: T.Popup.CloseOnEscape
    onOpened: saveButton.forceActiveFocus(Qt.TabFocusReason)
    onClosed: if (!saving) forget()

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
                    sheet.saving = true
                    sheet.close()
                    sheet.saveAsked()
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
