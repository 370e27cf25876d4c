// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Templates as T
import Tripoise

// A few words beside what the pointer or the keys are on.
T.ToolTip {
    id: hint
    x: parent ? (parent.width - implicitWidth) / 2 : 0
    y: -implicitHeight - Look.hairGap
    margins: Look.hairGap
    padding: Look.smallGap
    delay: 500
    closePolicy: T.Popup.CloseOnEscape | T.Popup.CloseOnPressOutsideParent | T.Popup.CloseOnReleaseOutsideParent
    implicitWidth: Math.min(320, contentItem.implicitWidth + leftPadding + rightPadding)
    implicitHeight: contentItem.implicitHeight + topPadding + bottomPadding
    contentItem: Text {
        text: hint.text
        font.family: Look.family
        font.pixelSize: Look.small
        color: Look.paper
        wrapMode: Text.Wrap
        textFormat: Text.PlainText
    }
    background: Rectangle {
        color: Look.ink
        radius: Look.radius
    }
}
