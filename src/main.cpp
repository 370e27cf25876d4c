// SPDX-License-Identifier: MIT
#include "command/command.h"
#include "session/log.h"

#include <QGuiApplication>
#include <QLoggingCategory>
#include <QQmlApplicationEngine>
#include <QSettings>
#include <QtQml/QQmlExtensionPlugin>

Q_IMPORT_QML_PLUGIN(TripoisePlugin)

namespace {

int runPicture(int argc, char** argv, const QStringList& arguments)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QLoggingCategory::setFilterRules(
        QStringLiteral("default.warning=false")); // a bare system has no XDG_RUNTIME_DIR
    const QGuiApplication application(argc, argv);
    return tripoise::runCommand(arguments);
}

bool hasDisplay()
{
#ifdef Q_OS_LINUX
    return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY")
           || qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
#else
    return true;
#endif
}

int runWindow(int argc, char** argv, const QString& file)
{
    // A frame follows its edit at once: by itself the platform waits 5 ms for more to come.
    if (!qEnvironmentVariableIsSet("QT_QPA_UPDATE_IDLE_TIME"))
        qputenv("QT_QPA_UPDATE_IDLE_TIME", "0");
    QGuiApplication application(argc, argv);
    QGuiApplication::setDesktopFileName(QStringLiteral("org.tripoise.Tripoise"));
    tripoise::log::begin();
    QQmlApplicationEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    engine.setInitialProperties({{QStringLiteral("startFile"), file}});
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Tripoise/Main.qml")));
    return engine.rootObjects().isEmpty() ? 1 : QGuiApplication::exec();
}

} // namespace

int main(int argc, char** argv)
{
    QCoreApplication::setApplicationName(QStringLiteral("tripoise"));
    QCoreApplication::setApplicationVersion(QStringLiteral(TRIPOISE_VERSION));
    QCoreApplication::setOrganizationName(QStringLiteral("tripoise"));
    QSettings::setDefaultFormat(QSettings::IniFormat); // a text file everywhere
    QStringList arguments;
    for (int i = 1; i < argc; ++i)
        arguments << QString::fromLocal8Bit(argv[i]);

    if (tripoise::opensWindow(arguments) && hasDisplay())
        return runWindow(argc, argv, arguments.value(0));
    // Only pictures and sheets need fonts; no command needs a display.
    if (arguments.value(0) == QLatin1String("draw") || arguments.value(0) == QLatin1String("sheet"))
        return runPicture(argc, argv, arguments);
    return tripoise::runCommand(arguments);
}
