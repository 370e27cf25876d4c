// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// A heading with sentences under it; nothing where there are none.
Column {
    id: list
    property string heading
    property var items: []

    visible: items.length > 0
    spacing: Look.hairGap

    InkText {
        visible: list.heading
        width: parent.width
        text: list.heading
        font.bold: true
        Accessible.role: Accessible.Heading
    }
    Repeater {
        model: list.items.length // lines that stay keep their place
        ToldLine {
            required property int index
            width: list.width
            text: list.items[index] ?? ""
        }
    }
}
