// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// Lines that say what they mean, one under another.
Column {
    id: list
    property int current: 0
    property Repeater lines: null

    Accessible.role: Accessible.List

    /// To the next line that is there, up or down; false at the end.
    function step(from: int, by: int): bool {
        for (let at = from + by; at >= 0 && at < lines.count; at += by) {
            const row = lines.itemAt(at)
            if (row && row.visible) {
                row.forceActiveFocus(Qt.TabFocusReason)
                return true
            }
        }
        return false
    }
}
