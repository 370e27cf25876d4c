// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import Tripoise

// What happened to a file, in a line that stays until it is put away.
Rectangle {
    id: notice
    required property Documents documents
    readonly property bool wrong: documents.noticeLevel === "wrong"

    visible: documents.notice
    implicitHeight: visible ? Math.max(Look.control, words.implicitHeight) + Look.smallGap : 0
    color: wrong ? Look.hazard : Look.tint

    RowLayout {
        anchors.fill: parent
        anchors.leftMargin: Look.gap
        anchors.rightMargin: Look.smallGap
        spacing: Look.smallGap
        Icon {
            visible: notice.wrong
            name: "hazard"
            color: Look.hazardInk
            Layout.preferredWidth: Look.large
            Layout.preferredHeight: Look.large
        }
        InkText {
            id: words
            objectName: "noticeText"
            text: notice.documents.notice
            color: notice.wrong ? Look.hazardInk : Look.ink
            maximumLineCount: 4
            elide: Text.ElideRight
            Layout.fillWidth: true
            Accessible.role: Accessible.AlertMessage
        }
        InkButton {
            objectName: "bringBack"
            visible: notice.documents.lookingBack
            text: qsTr("Bring it back")
            onClicked: notice.documents.bringBack()
        }
        InkButton {
            objectName: "toNewest"
            visible: notice.documents.lookingBack
            text: qsTr("To the newest")
            onClicked: notice.documents.openPath(notice.documents.filePath)
        }
        InkButton {
            objectName: "noticeDuplicate"
            visible: notice.documents.readOnly
            text: qsTr("Duplicate")
            onClicked: notice.documents.duplicate()
        }
        InkButton {
            objectName: "noticeAway"
            bare: true
            iconName: "close"
            hint: qsTr("Put away")
            onClicked: notice.documents.dismissNotice()
        }
    }
}
