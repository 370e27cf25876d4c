// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// What bindings leave lying about is gathered when nobody waits: a gathering takes as long as the
// painting of a frame. By itself it is due whenever the texts since the last one weigh a share of
// those that stay, of which a long one makes it rare in a run of edits.
Timer {
    id: tidying
    required property Session session
    readonly property var weight: " ".repeat(500000)

    interval: 700
    onTriggered: gc()

    readonly property Connections edits: Connections {
        target: tidying.session
        function onFittingChanged() { tidying.restart() }
        function onSolutionChanged() { tidying.restart() }
    }
}
