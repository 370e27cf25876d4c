// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Tripoise

// Which program this is, what it is made with, and under which licences.
Sheet {
    id: sheet
    closePolicy: T.Popup.CloseOnEscape | T.Popup.CloseOnPressOutside
    onOpened: away.forceActiveFocus(Qt.TabFocusReason)

    contentItem: ColumnLayout {
        spacing: Look.gap
        InkText {
            text: "Tripoise " + Qt.application.version
            font.pixelSize: Look.title
        }
        Repeater {
            model: [
                qsTr("Which size, which parts, for this rider. Under the MIT licence."),
                qsTr("Made with Qt 6 (LGPL 3), Eigen (MPL 2.0) and nlohmann/json (MIT); words in DejaVu Sans (Bitstream Vera licence)."),
                qsTr("What it gives are starting positions. The makers' limits, local rules and health professionals have the last word.")
            ]
            InkText {
                required property string modelData
                text: modelData
                Layout.fillWidth: true
                Layout.preferredWidth: Math.min(sheet.parent ? sheet.parent.width - 120 : 0, 440 * Look.textScale)
            }
        }
        InkButton {
            id: away
            objectName: "aboutAway"
            text: qsTr("Put away")
            Layout.alignment: Qt.AlignRight
            onClicked: sheet.close()
        }
    }
}
