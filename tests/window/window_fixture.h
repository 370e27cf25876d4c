// SPDX-License-Identifier: MIT
//
// The real window, off screen, in folders of its own.
#pragma once

#include "session/session.h"

#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTemporaryDir>
#include <QTest>

namespace tripoise {

/// Folders of the program's own, away from the user's.
class OwnFolders {
public:
    OwnFolders()
    {
        for (const char* name : {"HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME",
                                 "XDG_STATE_HOME", "XDG_RUNTIME_DIR"})
            qputenv(name, m_folder.path().toLocal8Bit());
        QFile::setPermissions(m_folder.path(), QFile::ReadOwner | QFile::WriteOwner
                                                   | QFile::ExeOwner); // as a runtime folder wants
    }
    [[nodiscard]] QString path(const QString& name) const { return m_folder.filePath(name); }

private:
    QTemporaryDir m_folder;
};

/// Everything below an item that is drawn, itself first; delegates are nobody's QObject children.
inline QList<QQuickItem*> itemsUnder(QQuickItem* item)
{
    QList<QQuickItem*> found;
    if (!item)
        return found;
    found << item;
    for (QQuickItem* child : item->childItems())
        found << itemsUnder(child);
    return found;
}

/// The first below it of that name; null where there is none.
inline QQuickItem* itemUnder(QQuickItem* item, const QString& name)
{
    for (QQuickItem* each : itemsUnder(item))
        if (each->objectName() == name)
            return each;
    return nullptr;
}

/// Main.qml as main() loads it.
class OpenWindow {
public:
    explicit OpenWindow(const QString& file = {})
    {
        engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
        engine.setInitialProperties({{QStringLiteral("startFile"), file}});
        engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Tripoise/Main.qml")));
    }
    [[nodiscard]] QQuickWindow* window() const
    {
        return engine.rootObjects().isEmpty()
                   ? nullptr
                   : qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
    }
    [[nodiscard]] Session* session() const
    {
        return window() ? window()->property("session").value<Session*>() : nullptr;
    }
    template <typename Type> [[nodiscard]] Type* object(const char* property) const
    {
        return qobject_cast<Type*>(window()->property(property).value<QObject*>());
    }
    [[nodiscard]] QQuickItem* item(const char* name) const
    {
        return window() ? window()->findChild<QQuickItem*>(QLatin1String(name)) : nullptr;
    }
    [[nodiscard]] bool settle() const
    {
        return session() && QTest::qWaitFor([this] { return session()->settled(); }, 5000);
    }

    QQmlApplicationEngine engine;
};

/// Pixels of just this colour.
inline qint64 count(const QImage& image, const QColor& color)
{
    qint64 found = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            found += image.pixelColor(x, y) == color;
    return found;
}

inline QString demoFile(const char* name)
{
    return QStringLiteral(TRIPOISE_ASSETS "/demo/%1.json").arg(QLatin1String(name));
}

} // namespace tripoise
