// SPDX-License-Identifier: MIT
//
// The visits the window is made for, on the real Main.qml with real clicks and keys; the answers
// are held against the model asked directly.
#include "document/builders_choice.h"
#include "document/read.h"
#include "session/library.h"
#include "shipped/tables.h"
#include "support.h"
#include "window/window_fixture.h"
#include "wording/advice_text.h"

#include <QDir>
#include <QQmlContext>
#include <QQmlEngine>
#include <QtQml/QQmlExtensionPlugin>
#include <QtQuickTest>

#include <sys/stat.h>

Q_IMPORT_QML_PLUGIN(TripoisePlugin)

using namespace tripoise;

/// What the model answers to a session's fitting, asked without the window.
class Truth : public QObject {
    Q_OBJECT

public:
    inline static QString ownFolder;

    Q_INVOKABLE QVariantMap decide(QObject* object) const
    {
        const auto* session = qobject_cast<Session*>(object);
        if (!session)
            return {};
        const Fitting& fitting = session->fitting();
        const Tables tables = weighted(shippedTables(), fitting.choices);
        const Prepared prepared = prepare(fitting.frames, fitting.bicycle, fitting.stock, tables);
        const Advice advice =
            advise(fitting.rider, fitting.riding, fitting.current, prepared, tables);
        if (!advice.solved)
            return {};
        const Candidate& named = advice.leading();
        QVariantMap map{
            {QStringLiteral("size"), QString::fromStdString(prepared.sizes[named.size].frame.size)},
            {QStringLiteral("frame"), int(named.size)},
            {QStringLiteral("sentence"), verdictSentence(advice, prepared, fitting.riding)},
            {QStringLiteral("stem"), named.best->setup.stem.lengthMm}};
        QVariantList uses;
        for (const UseSetup& use : named.byUse)
            uses << use.advised.setup.stem.lengthMm;
        map.insert(QStringLiteral("stemsByUse"), uses);
        return map;
    }
    Q_INVOKABLE QVariantList readings(QObject* object, const QString& key) const
    {
        QVariantList readings;
        if (const auto* session = qobject_cast<Session*>(object))
            for (const Measurement& measurement : session->fitting().rider.measurements)
                if (keyOf(measurement.quantity) == key.toStdString())
                    for (const double reading : measurement.readings)
                        readings << reading;
        return readings;
    }
    Q_INVOKABLE QVariantList shares(QObject* object) const
    {
        QVariantList shares;
        if (const auto* session = qobject_cast<Session*>(object))
            for (const double share : session->fitting().riding.mix.share)
                shares << share;
        return shares;
    }
    Q_INVOKABLE QVariantMap trial(QObject* object) const
    {
        const auto* session = qobject_cast<Session*>(object);
        if (!session || !session->fitting().choices.trial)
            return {};
        const Trial& trial = *session->fitting().choices.trial;
        return {{QStringLiteral("reach"), trial.gripReachMm},
                {QStringLiteral("height"), trial.gripHeightMm}};
    }
    /// What the builder chose: a size, a reason, whether a set-up too.
    Q_INVOKABLE QVariantMap choice(QObject* object) const
    {
        const auto* session = qobject_cast<Session*>(object);
        if (!session)
            return {};
        const Choices& choices = session->fitting().choices;
        const QString size = choices.size ? QString::fromStdString(choices.size->size) : QString();
        return {{QStringLiteral("size"), size},
                {QStringLiteral("reason"), QString::fromStdString(choices.reason)},
                {QStringLiteral("setup"), ownSetup(choices)}};
    }
    /// A frame that the shop kept from a table read before.
    Q_INVOKABLE bool keepFrame() const
    {
        const Fitting demo = test::demoFitting();
        return !library::keep(demo.frames[0].model, demo.frames);
    }
    /// Paths in the tests' own folder: of a pipe, and of folders.
    Q_INVOKABLE QString pipe() const
    {
        const QString path = ownFolder + QStringLiteral("pipe.json");
        (void)QFile::remove(path); // a file that stood there
        (void)mkfifo(QFile::encodeName(path).constData(), 0600);
        return path;
    }
    Q_INVOKABLE bool makeFolder(const QString& path) const { return QDir(ownFolder).mkpath(path); }
    /// Another fitting altogether, with the same content; and whether nothing was changed in it.
    Q_INVOKABLE void startAnew(QObject* object)
    {
        auto* session = qobject_cast<Session*>(object);
        m_started = session->fitting();
        session->start(m_started);
    }
    Q_INVOKABLE bool untouched(QObject* object) const
    {
        const auto* session = qobject_cast<Session*>(object);
        return session->fitting() == m_started && !session->canUndo();
    }
    Q_INVOKABLE int frames(QObject* object) const
    {
        const auto* session = qobject_cast<Session*>(object);
        return session ? int(session->fitting().frames.size()) : -1;
    }

private:
    Fitting m_started;
};

class Stage : public QObject {
    Q_OBJECT

public slots:
    void qmlEngineAvailable(QQmlEngine* engine)
    {
        engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
        engine->rootContext()->setContextProperty(QStringLiteral("truth"), &m_truth);
        engine->rootContext()->setContextProperty(
            QStringLiteral("demoFolder"),
            QUrl::fromLocalFile(QStringLiteral(TRIPOISE_ASSETS "/demo/")).toString());
        engine->rootContext()->setContextProperty(QStringLiteral("ownFolder"),
                                                  QUrl::fromLocalFile(Truth::ownFolder).toString());
    }

private:
    Truth m_truth;
};

int main(int argc, char** argv)
{
    const OwnFolders folders;
    Truth::ownFolder = folders.path(QStringLiteral("mine/"));
    (void)QDir().mkpath(Truth::ownFolder);
    QCoreApplication::setOrganizationName(QStringLiteral("tripoise"));
    QCoreApplication::setApplicationName(QStringLiteral("tripoise"));
    Stage stage;
    return quick_test_main_with_setup(argc, argv, "journeys", QUICK_TEST_SOURCE_DIR, &stage);
}

#include "tst_journeys.moc"
