// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// A sentence of a list, its mark outside of it.
Item {
    id: line
    property alias text: words.text
    implicitHeight: words.implicitHeight

    InkText {
        text: "·"
        font.bold: true
        Accessible.ignored: true
    }
    InkText {
        id: words
        x: Look.body
        width: parent.width - x
        lineHeight: 1.12
    }
}
