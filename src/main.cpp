// SPDX-License-Identifier: MIT
#include "command/command.h"

#include <QGuiApplication>
#include <QLoggingCategory>

int main(int argc, char** argv)
{
    QCoreApplication::setApplicationName(QStringLiteral("tripoise"));
    QStringList arguments;
    for (int i = 1; i < argc; ++i)
        arguments << QString::fromLocal8Bit(argv[i]);

    // Only a picture needs fonts; no command needs a display.
    if (arguments.value(0) != QLatin1String("draw"))
        return tripoise::runCommand(arguments);
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QLoggingCategory::setFilterRules(
        QStringLiteral("default.warning=false")); // a bare system has no XDG_RUNTIME_DIR
    const QGuiApplication application(argc, argv);
    return tripoise::runCommand(arguments);
}
