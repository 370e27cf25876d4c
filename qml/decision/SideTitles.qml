// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import Tripoise

// Over two columns: which size is which. Mirrored, the second stands at the far end.
RowLayout {
    id: titles
    property string shownName
    property string besideName
    property bool mirrored: false
    spacing: Look.smallGap

    component Name: InkText {
        font.bold: true
        font.pixelSize: Look.small
        wrapMode: Text.NoWrap
        elide: Text.ElideRight
        Layout.maximumWidth: titles.width / 2 - 2 * Look.wideGap
    }

    RowLayout {
        spacing: Look.hairGap
        Layout.preferredWidth: 1
        Layout.fillWidth: true
        SizeSwatch {}
        Name { text: titles.shownName }
        Item { Layout.fillWidth: true }
    }
    RowLayout {
        visible: titles.besideName
        spacing: Look.hairGap
        Layout.preferredWidth: 1
        Layout.fillWidth: true
        Item { visible: titles.mirrored; Layout.fillWidth: true }
        SizeSwatch { beside: true }
        Name { text: titles.besideName; color: Look.otherText }
        Item { visible: !titles.mirrored; Layout.fillWidth: true }
    }
}
