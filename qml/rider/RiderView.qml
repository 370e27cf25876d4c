import QtQuick
import Tripoise
FocusScope { required property Session session
 signal leave()
 Rectangle { anchors.fill: parent; color: Look.paper }
 Keys.onEscapePressed: leave() }
