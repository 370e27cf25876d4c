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
    property var then: null // what waits, and only while this asks

    function ask(next: var) {
        then = next
        if (documents.settle())
            proceed()
        else
            open()
    }
    function proceed() {
        const next = then
        close()
        if (next)
            next()
    }

    closePolicy: T.Popup.CloseOnEscape
    onOpened: saveButton.forceActiveFocus(Qt.TabFocusReason)
    onClosed: then = null

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
                text: sheet.documents.readOnly ? qsTr("Duplicate") : qsTr("Save")
                onClicked: {
                    if (sheet.documents.readOnly ? sheet.documents.duplicate() : sheet.documents.saveNow())
                        sheet.proceed()
                    else
                        sheet.close() // why is told; nothing waits any longer
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
