import QtQuick
import Tripoise
FocusScope { id: pane
 required property Session session
 required property Preferences preferences
 function takeFocus() { board.forceActiveFocus() }
 function backToAdvised() { board.backToAdvised() }
 Board { id: board; anchors.fill: parent; focus: true; session: pane.session; night: Look.night; letters: Look.small } }
