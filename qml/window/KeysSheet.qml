// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Tripoise

// The list of keys.
Sheet {
    id: sheet
    required property WindowKeys keys
    closePolicy: T.Popup.CloseOnEscape | T.Popup.CloseOnPressOutside
    onOpened: away.forceActiveFocus(Qt.TabFocusReason)

    component Line: RowLayout {
        property string pressed
        property string what
        spacing: Look.wideGap
        Accessible.role: Accessible.StaticText
        Accessible.name: pressed + ": " + what
        InkText {
            text: parent.pressed
            font.bold: true
            wrapMode: Text.NoWrap
            Layout.preferredWidth: 140 * Look.textScale
            Accessible.ignored: true
        }
        InkText {
            text: parent.what
            Layout.fillWidth: true
            Accessible.ignored: true
        }
    }

    contentItem: ColumnLayout {
        spacing: Look.gap
        InkText {
            text: qsTr("Keys")
            font.pixelSize: Look.title
        }
        Scroll {
            Layout.preferredWidth: Math.min(sheet.parent ? sheet.parent.width - 120 : 0, 540 * Look.textScale)
            Layout.preferredHeight: Math.min(lines.implicitHeight, sheet.parent ? sheet.parent.height - 200 : 0)
            contentHeight: lines.implicitHeight
            ColumnLayout {
                id: lines
                width: parent.width - Look.gap
                spacing: Look.hairGap
                Repeater {
                    model: sheet.keys.all
                    Line {
                        required property WindowKey modelData
                        pressed: modelData.said
                        what: modelData.what
                        Layout.fillWidth: true
                    }
                }
                Repeater {
                    model: sheet.keys.local
                    Line {
                        required property var modelData
                        pressed: modelData.keys
                        what: modelData.what
                        Layout.fillWidth: true
                    }
                }
            }
        }
        InkButton {
            id: away
            objectName: "keysAway"
            text: qsTr("Put away")
            Layout.alignment: Qt.AlignRight
            onClicked: sheet.close()
        }
    }
}
