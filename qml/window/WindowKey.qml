// SPDX-License-Identifier: MIT
import QtQuick

Shortcut {
    property string keys
    property string what
    property string also
    readonly property string said: what ? nativeText : "" // anew in another language, as `what` is
    sequences: also ? [keys, also] : [keys]
    context: Qt.WindowShortcut
}
