// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// A run of text in one of the program's four sizes.
Text {
    font.family: Look.family
    font.pixelSize: Look.body
    color: Look.ink
    textFormat: Text.PlainText
    wrapMode: Text.Wrap
    Accessible.role: Accessible.StaticText
    Accessible.name: text
}
