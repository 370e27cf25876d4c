// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// A heading with sentences under it; nothing where there are none.
Column {
    id: list
    property string heading
    property bool plainHeading: false
    property var items: []
    property int most: 0 // lines there ever were: what is not said now stands by unseen

    visible: items.length > 0
    onItemsChanged: if (items) most = Math.max(most, items.length) // none while what holds it is made
    spacing: Look.hairGap

    InkText {
        visible: list.heading
        width: parent.width
        text: list.heading
        font.bold: !list.plainHeading
        Accessible.role: Accessible.Heading
    }
    Repeater {
        model: list.most
        ToldLine {
            required property int index
            visible: index < list.items.length
            width: list.width
            text: list.items[index] ?? ""
        }
    }
}
