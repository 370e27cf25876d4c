// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// Every shortcut of the window, once: what the keys do, and what the list of keys shows.
Item {
    id: keys
    required property Session session
    required property Preferences preferences
    readonly property list<WindowKey> all: [
        WindowKey { sequence: "Ctrl+N"; what: qsTr("new fitting"); onActivated: keys.newAsked() },
        WindowKey { sequence: "Ctrl+O"; what: qsTr("open a fitting or a frame file"); onActivated: keys.openAsked() },
        WindowKey { sequence: "Ctrl+S"; what: qsTr("save"); onActivated: keys.saveAsked() },
        WindowKey { sequence: "Ctrl+Shift+S"; what: qsTr("save under another name"); onActivated: keys.saveAsAsked() },
        WindowKey { sequence: "Ctrl+Z"; what: qsTr("undo"); onActivated: keys.session.undo() },
        WindowKey { sequence: "Ctrl+Shift+Z"; also: "Ctrl+Y"; what: qsTr("redo"); onActivated: keys.session.redo() },
        WindowKey { sequence: "F2"; what: qsTr("to the brief"); onActivated: keys.briefAsked() },
        WindowKey { sequence: "F3"; what: qsTr("to the drawing"); onActivated: keys.boardAsked() },
        WindowKey { sequence: "F4"; what: qsTr("to the decision"); onActivated: keys.decisionAsked() },
        WindowKey { sequence: "F5"; what: qsTr("show the rider, and back"); onActivated: keys.riderAsked() },
        WindowKey { sequence: "Ctrl+0"; what: qsTr("back to the advised set-up"); onActivated: keys.advisedAsked() },
        WindowKey { sequence: "Ctrl+L"; what: qsTr("day or night"); onActivated: keys.preferences.toggleNight() },
        WindowKey { sequence: "Ctrl+U"; what: qsTr("millimetres or inches"); onActivated: keys.preferences.toggleUnits() },
        WindowKey { sequence: "Ctrl++"; also: "Ctrl+="; what: qsTr("larger letters"); onActivated: keys.preferences.largerText() },
        WindowKey { sequence: "Ctrl+-"; what: qsTr("smaller letters"); onActivated: keys.preferences.smallerText() },
        WindowKey { sequence: "F1"; what: qsTr("this list"); onActivated: keys.keysAsked() }
    ]
    /// Keys that work where the focus is; told in the list alone.
    readonly property var local: [
        { keys: "Ctrl+1 … 6", what: qsTr("the usual mixes of riding") },
        { keys: "0 … 9", what: qsTr("on a share of riding: that many tens of per cent") },
        { keys: "↑ ↓", what: qsTr("in a number: one step up or down") },
        { keys: "← → ↑ ↓", what: qsTr("on a handle of the drawing: move it 1 mm, with Shift 5 mm") },
        { keys: "+ − F", what: qsTr("in the drawing: nearer, further, all of it") },
        { keys: "Esc", what: qsTr("in a number: what stood there before") }
    ]

    signal newAsked()
    signal openAsked()
    signal saveAsked()
    signal saveAsAsked()
    signal briefAsked()
    signal boardAsked()
    signal decisionAsked()
    signal riderAsked()
    signal keysAsked()
    signal advisedAsked()
    signal presetAsked(int index)

    Repeater {
        model: 6
        Item {
            required property int index
            Shortcut {
                sequence: "Ctrl+" + (parent.index + 1)
                onActivated: keys.presetAsked(parent.index)
            }
        }
    }

    function textOf(sequence: string): string {
        for (const key of all)
            if (key.sequence === sequence)
                return key.said
        return sequence
    }
}
