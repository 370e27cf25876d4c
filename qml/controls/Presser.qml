// SPDX-License-Identifier: MIT
pragma Singleton
import QtQuick
import Tripoise

// What a click does, for Return and for who presses by other means: a button's own `click` is not
// known to QML before Qt 6.8.
QtObject {
    function press(button: Item) {
        if (button.enabled)
            button.clicked()
    }
    /// The keys go on to the next line to write on.
    function toNextLine(line: Item) {
        let next = line.nextItemInFocusChain()
        while (next !== line && !(next instanceof TextEntry))
            next = next.nextItemInFocusChain()
        next.forceActiveFocus(Qt.TabFocusReason)
    }
    /// Of one that is on or off.
    function toggle(button: Item) {
        if (!button.enabled)
            return
        if (button.checkable) {
            button.toggle()
            button.toggled()
        }
        button.clicked()
    }
}
