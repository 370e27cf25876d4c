// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

Rectangle {
    implicitHeight: 1
    implicitWidth: 1
    color: Look.hair
}
