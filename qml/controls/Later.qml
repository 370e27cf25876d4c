// SPDX-License-Identifier: MIT
import QtQuick

// What is not made before it is first wanted, and stays from then on.
Loader {
    id: later
    property bool wanted: false
    default property alias what: later.sourceComponent

    active: false
    visible: wanted
    onWantedChanged: if (wanted) active = true
    Component.onCompleted: if (wanted) active = true
}
