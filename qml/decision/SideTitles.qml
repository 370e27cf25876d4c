// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// Over two columns: which is which. Mirrored, the second stands at the far end.
Item {
    id: titles
    property string shownName
    property string besideName
    property bool mirrored: false
    readonly property real half: width / 2

    implicitHeight: Math.max(shown.implicitHeight, beside.implicitHeight)

    component Name: InkText {
        font.bold: true
        font.pixelSize: Look.small
        width: titles.half - swatch.width - 2 * Look.smallGap
    }

    SizeSwatch {
        id: swatch
        anchors.verticalCenter: parent.verticalCenter
    }
    Name {
        id: shown
        x: swatch.width + Look.smallGap
        text: titles.shownName
    }
    SizeSwatch {
        visible: titles.besideName
        beside: true
        anchors.verticalCenter: parent.verticalCenter
        x: titles.mirrored ? titles.width - width - Look.smallGap - beside.contentWidth : titles.half
    }
    Name {
        id: beside
        visible: titles.besideName
        x: titles.mirrored ? titles.width - width : titles.half + swatch.width + Look.smallGap
        horizontalAlignment: titles.mirrored ? Text.AlignRight : Text.AlignLeft
        text: titles.besideName
        color: Look.otherText
    }
}
