// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// Every shortcut of the window, once: what the keys do, and what the list of keys shows.
Item {
    id: list
    required property Session session
    required property Preferences preferences
    readonly property list<WindowKey> all: [
        WindowKey { keys: "Ctrl+N"; what: qsTr("new fitting"); onActivated: list.newAsked() },
        WindowKey { keys: "Ctrl+O"; what: qsTr("the fittings: open, duplicate, import"); onActivated: list.openAsked() },
        WindowKey { keys: "Ctrl+S"; what: qsTr("save"); onActivated: list.saveAsked() },
        WindowKey { keys: "Ctrl+Shift+S"; what: qsTr("export a copy"); onActivated: list.saveAsAsked() },
        WindowKey { keys: "Ctrl+P"; what: qsTr("write the set-up sheet"); onActivated: list.sheetAsked() },
        WindowKey { keys: "Ctrl+Z"; what: qsTr("undo"); onActivated: list.session.undo() },
        WindowKey { keys: "Ctrl+Shift+Z"; also: "Ctrl+Y"; what: qsTr("redo"); onActivated: list.session.redo() },
        WindowKey { keys: "Ctrl+T"; what: qsTr("sizes from a geometry table"); onActivated: list.tableAsked() },
        WindowKey { keys: "Ctrl+K"; what: qsTr("sizes of a frame that was kept"); onActivated: list.keptAsked() },
        WindowKey { keys: "Ctrl+Shift+K"; what: qsTr("the sizes of the fitting before"); onActivated: list.lastFramesAsked() },
        WindowKey { keys: "F2"; what: qsTr("to the brief"); onActivated: list.briefAsked() },
        WindowKey { keys: "F3"; what: qsTr("to the drawing"); onActivated: list.boardAsked() },
        WindowKey { keys: "F4"; what: qsTr("to the decision"); onActivated: list.decisionAsked() },
        WindowKey { keys: "F5"; what: qsTr("show the rider, and back"); onActivated: list.riderAsked() },
        WindowKey { keys: "F6"; what: qsTr("why not another size; again: the next one"); onActivated: list.whyNotAsked() },
        WindowKey { keys: "F7"; what: qsTr("what if the riding were another"); onActivated: list.whatIfAsked() },
        WindowKey { keys: "F8"; what: qsTr("what another choice costs"); onActivated: list.costAsked() },
        WindowKey { keys: "Ctrl+0"; what: qsTr("back to the advised set-up"); onActivated: list.advisedAsked() },
        WindowKey { keys: "Ctrl+L"; what: qsTr("day or night"); onActivated: list.preferences.toggleNight() },
        WindowKey { keys: "Ctrl+U"; what: qsTr("millimetres or inches"); onActivated: list.preferences.toggleUnits() },
        WindowKey { keys: "Ctrl++"; also: "Ctrl+="; what: qsTr("larger letters"); onActivated: list.preferences.largerText() },
        WindowKey { keys: "Ctrl+-"; what: qsTr("smaller letters"); onActivated: list.preferences.smallerText() },
        WindowKey { keys: "F1"; what: qsTr("this list"); onActivated: list.keysAsked() }
    ]
    /// Keys that work where the focus is; told in the list alone.
    readonly property var local: [
        { keys: qsTr("Ctrl+1 … 6"), what: qsTr("the usual mixes of riding") },
        { keys: "0 … 9", what: qsTr("on a share of riding: that many tens of per cent") },
        { keys: qsTr("Return"), what: qsTr("in a number: on to the next one") },
        { keys: ";", what: qsTr("in a body measure: a second reading, 842; 846") },
        { keys: "?", what: qsTr("behind a body measure: it is a guess") },
        { keys: "↑ ↓", what: qsTr("in a number: one step up or down") },
        { keys: "← → ↑ ↓", what: qsTr("on a handle of the drawing: move it 1 mm, with Shift 5 mm") },
        { keys: "+ − F", what: qsTr("in the drawing: nearer, further, all of it") },
        { keys: "Esc", what: qsTr("in a number: what stood there before") }
    ]

    signal newAsked()
    signal openAsked()
    signal saveAsked()
    signal saveAsAsked()
    signal sheetAsked()
    signal tableAsked()
    signal keptAsked()
    signal lastFramesAsked()
    signal briefAsked()
    signal boardAsked()
    signal decisionAsked()
    signal riderAsked()
    signal whyNotAsked()
    signal whatIfAsked()
    signal costAsked()
    signal keysAsked()
    signal advisedAsked()
    signal presetAsked(int index)

    Repeater {
        model: 6
        Item {
            id: preset
            required property int index
            Shortcut {
                sequence: "Ctrl+" + (preset.index + 1)
                onActivated: list.presetAsked(preset.index)
            }
        }
    }

    function textOf(sequence: string): string {
        for (let i = 0; i < all.length; ++i)
            if (all[i].keys === sequence)
                return all[i].said
        return sequence
    }
}
