// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// A sentence with the sign of a hazard.
Item {
    id: line
    property alias text: words.text
    implicitHeight: words.implicitHeight

    Icon {
        name: "hazard"
        color: Look.hazardText
        width: Look.body
        height: Look.body
        y: 2
    }
    InkText {
        id: words
        x: Look.wideGap
        width: parent.width - x
        font.bold: true
        lineHeight: 1.12
    }
}
