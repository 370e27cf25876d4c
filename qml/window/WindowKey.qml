// SPDX-License-Identifier: MIT
import QtQuick

Shortcut {
    property string keys
    property string what
    property string also
    readonly property string said: what ? nativeText : "" // anew in another language, as `what` is
    sequence: keys // its native text is this one's alone
    sequences: also ? [also] : []
    context: Qt.WindowShortcut
}
