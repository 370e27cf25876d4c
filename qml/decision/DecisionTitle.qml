// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// The verdict, written as the title of a drawing is.
Item {
    id: block
    required property DecisionModel decision
    property string caption

    implicitHeight: column.implicitHeight
    activeFocusOnTab: true
    Accessible.role: Accessible.StaticText
    Accessible.name: decision.sentence
    Accessible.focusable: true
    Accessible.focused: activeFocus

    FocusRing { target: block; anchors.margins: -Look.hairGap }
    Column {
        id: column
        width: parent.width
        InkText {
            objectName: "caption"
            width: parent.width
            text: block.caption
            font.pixelSize: Look.small
            color: Look.soft
            wrapMode: Text.NoWrap
            elide: Text.ElideRight
        }
        InkText {
            objectName: "verdict"
            width: parent.width
            text: block.decision.title
            font.pixelSize: block.decision.state === DecisionModel.Lacking ? Look.large : Look.title
            topPadding: Look.hairGap
            bottomPadding: Look.hairGap
            Accessible.ignored: true
        }
        Rectangle { width: parent.width; height: 2; color: Look.ink }
        Item { width: 1; height: 2 }
        Hairline { width: parent.width; color: Look.ink }
        InkText {
            objectName: "detail"
            visible: text
            width: parent.width
            text: block.decision.detail
            topPadding: Look.smallGap
            lineHeight: 1.12
            Accessible.ignored: true
        }
        InkText {
            objectName: "kind"
            visible: text
            width: parent.width
            text: block.decision.kind
            topPadding: Look.hairGap
            font.pixelSize: Look.small
            color: Look.soft
        }
    }
}
