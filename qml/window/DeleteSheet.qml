// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Tripoise

// Asks before a rider is deleted, and says what goes.
Sheet {
    id: sheet
    objectName: "deleteSheet"
    required property Documents documents
    property var lines: []
    property string path // empty for what is on the screen
    property string rider
    closePolicy: T.Popup.CloseOnEscape
    onOpened: back.forceActiveFocus(Qt.TabFocusReason)

    function ask() {
        askAbout("")
    }
    function askAbout(file: string) {
        path = file
        rider = documents.riderOf(file)
        lines = documents.kept(file)
        open()
    }

    contentItem: ColumnLayout {
        spacing: Look.gap
        InkText {
            text: qsTr("Delete “%1” and all that is kept of this rider?").arg(sheet.rider)
            font.pixelSize: Look.large
            Layout.maximumWidth: 520 * Look.textScale
            Layout.fillWidth: true
        }
        Repeater {
            model: sheet.lines
            InkText {
                required property string modelData
                objectName: "deletedLine"
                text: "· " + modelData
                wrapMode: Text.Wrap
                Layout.maximumWidth: 520 * Look.textScale
                Layout.fillWidth: true
            }
        }
        InkText {
            text: qsTr("This cannot be undone. What others have copied, and backups, stay as they are.")
            color: Look.soft
            Layout.maximumWidth: 520 * Look.textScale
            Layout.fillWidth: true
        }
        RowLayout {
            spacing: Look.smallGap
            InkButton {
                objectName: "deleteForGood"
                text: qsTr("Delete")
                onClicked: {
                    sheet.close()
                    sheet.documents.deleteRider(sheet.path)
                }
            }
            InkButton {
                id: back
                objectName: "deleteBack"
                strong: true
                text: qsTr("Back")
                onClicked: sheet.close()
            }
        }
    }
}
