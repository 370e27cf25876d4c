// SPDX-License-Identifier: MIT
import QtQuick

Shortcut {
    property string what
    property string also
    readonly property string said: nativeText
    sequences: also ? [sequence, also] : [sequence]
    context: Qt.WindowShortcut
}
