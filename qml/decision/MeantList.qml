// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// Lines that say what they mean, one under another. The tab key stops at one of them: at the one last
// stood on, or the first that is there.
Column {
    id: list
    property int current: 0
    property int stop: 0
    property Repeater lines: null

    Accessible.role: Accessible.List
    Component.onCompleted: settle()
    onCurrentChanged: settle()

    function isThere(at: int): bool {
        const row = lines?.itemAt(at)
        return row ? row.visible : false
    }
    function settle() {
        let at = 0
        if (isThere(current))
            at = current
        else
            while (at < (lines?.count ?? 0) && !isThere(at))
                ++at
        if (isThere(at))
            stop = at
    }
    /// To the next line that is there, up or down; false at the end.
    function step(from: int, by: int): bool {
        for (let at = from + by; at >= 0 && at < lines.count; at += by) {
            if (isThere(at)) {
                lines.itemAt(at).forceActiveFocus(Qt.TabFocusReason)
                return true
            }
        }
        return false
    }
}
