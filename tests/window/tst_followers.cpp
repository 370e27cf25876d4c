// SPDX-License-Identifier: MIT
//
// Every type of the module that is given another of its objects to follow - a session, a board, the
// documents - whatever it is called: it works with none, lets go of one before it takes another,
// shows the other as if there had been none before, and outlives it. The types are found among
// those that are registered, so that a new one is tested by itself.
#include "window/warnings.h"
#include "window/window_fixture.h"

#include "support.h"

#include <QAbstractItemModel>
#include <QDir>
#include <QMetaMethod>
#include <QPainter>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QQuickPaintedItem>
#include <QtQml/QQmlExtensionPlugin>

#include <cmath>
#include <memory>

Q_IMPORT_QML_PLUGIN(TripoisePlugin)

using namespace tripoise;
using namespace tripoise::test;

namespace {

bool isOurs(const QMetaObject* type)
{
    return type && QByteArray(type->className()).startsWith("tripoise::");
}

/// As it is registered with QML, without what its bases say of themselves.
QByteArray ownInfo(const QMetaObject* type, const char* name)
{
    for (int i = type->classInfoOffset(); i < type->classInfoCount(); ++i)
        if (qstrcmp(type->classInfo(i).name(), name) == 0)
            return type->classInfo(i).value();
    return {};
}

bool isCreatable(const QMetaObject* type)
{
    return isOurs(type) && ownInfo(type, "QML.Element") == "auto"
           && ownInfo(type, "QML.Creatable") != "false";
}

/// A property that is given an object of the module to follow.
bool isFollowing(const QMetaProperty& property)
{
    return property.isWritable() && isCreatable(property.metaType().metaObject());
}

/// Calls something with each property that our own types declare, also those of its bases.
template <typename Each> void forProperties(const QMetaObject* type, const Each& each)
{
    for (; type; type = type->superClass())
        for (int i = type->propertyOffset(); isOurs(type) && i < type->propertyCount(); ++i)
            each(type->property(i));
}

QString told(const QVariant& value, int depth = 3);

QString toldOfModel(const QAbstractItemModel& model, int depth)
{
    QString text;
    const auto roles = model.roleNames();
    QList<int> order = roles.keys();
    std::sort(order.begin(), order.end());
    for (int row = 0; row < model.rowCount(); ++row)
        for (const int role : order)
            text += QStringLiteral("\n%1 %2: ").arg(row).arg(QLatin1String(roles[role]))
                    + told(model.data(model.index(row, 0), role), depth);
    return text;
}

QString toldOfObject(const QObject& object, int depth)
{
    QString text = QString::fromLatin1(object.metaObject()->className());
    forProperties(object.metaObject(), [&](const QMetaProperty& property) {
        if (!isFollowing(property))
            text += QStringLiteral("\n%1: ").arg(QLatin1String(property.name()))
                    + told(property.read(&object), depth);
    });
    if (const auto* model = qobject_cast<const QAbstractItemModel*>(&object))
        text += toldOfModel(*model, depth);
    return text;
}

/// All that can be read of it, as a text.
QString told(const QVariant& value, int depth)
{
    if (depth == 0)
        return {};
    if (value.canConvert<QObject*>()) {
        const QObject* object = value.value<QObject*>();
        return object ? toldOfObject(*object, depth - 1) : QStringLiteral("none");
    }
    QString text;
    if (const QMetaObject* gadget = value.metaType().metaObject();
        gadget && value.metaType().flags().testFlag(QMetaType::IsGadget)) {
        for (int i = 0; i < gadget->propertyCount(); ++i)
            text += QLatin1Char('|')
                    + told(gadget->property(i).readOnGadget(value.constData()), depth - 1);
        return text;
    }
    if (value.typeId() == QMetaType::QVariantList || value.canConvert<QList<QObject*>>()) {
        for (const QVariant& one : value.toList())
            text += QLatin1Char('[') + told(one, depth - 1) + QLatin1Char(']');
        return text;
    }
    QDebug(&text).nospace() << value;
    return text;
}

/// Values of a type that one might be given.
QVariantList samples(const QMetaType& type)
{
    switch (type.id()) {
    case QMetaType::Bool: return {true, false};
    case QMetaType::Int: return {-1, 0, 1, 1000000};
    case QMetaType::Double: return {std::nan(""), -1.0, 0.0, 1.0, 1000.0};
    case QMetaType::QString: return {QString(), QStringLiteral("x"), QStringLiteral("flat")};
    default: return {QVariant(type)};
    }
}

void callWith(QObject& object, const QMetaMethod& method, qsizetype sample)
{
    QVariantList values;
    for (int i = 0; i < method.parameterCount(); ++i) {
        const QVariantList from = samples(method.parameterMetaType(i));
        values << from[sample % from.size()];
    }
    std::array<QGenericArgument, 6> arguments;
    for (qsizetype i = 0; i < values.size(); ++i)
        arguments[std::size_t(i)] =
            QGenericArgument(values[i].metaType().name(), values[i].constData());
    QVariant result(method.returnMetaType());
    const QGenericReturnArgument back =
        result.isValid() ? QGenericReturnArgument(method.typeName(), result.data())
                         : QGenericReturnArgument();
    QVERIFY2(method.invoke(&object, Qt::DirectConnection, back, arguments[0], arguments[1],
                           arguments[2], arguments[3], arguments[4], arguments[5]),
             method.methodSignature().constData());
}

/// Methods that screens call; not those that are handed one of the screens' own objects.
bool isCallable(const QMetaMethod& method)
{
    for (int i = 0; i < method.parameterCount(); ++i)
        if (const QMetaObject* type = method.parameterMetaType(i).metaObject())
            if (!isOurs(type))
                return false;
    return method.methodType() == QMetaMethod::Method;
}

/// Everything that can be done with it from outside is done.
void exercise(QObject& object)
{
    (void)told(QVariant::fromValue(&object));
    if (auto* item = qobject_cast<QQuickPaintedItem*>(&object)) {
        QImage image(300, 200, QImage::Format_RGB32);
        QPainter painter(&image);
        item->paint(&painter);
    }
    forProperties(object.metaObject(), [&](const QMetaProperty& property) {
        if (property.isWritable() && !isFollowing(property))
            for (const QVariant& value : samples(property.metaType()))
                property.write(&object, value);
    });
    for (const QMetaObject* type = object.metaObject(); type; type = type->superClass())
        for (int i = type->methodOffset(); isOurs(type) && i < type->methodCount(); ++i)
            for (qsizetype sample = 0; sample < 4 && isCallable(type->method(i)); ++sample)
                callWith(object, type->method(i), sample);
}

/// For access to what a signal is connected to.
class Signals : public QObject {
public:
    /// How many receivers each signal of an object has.
    static QList<int> receiversOf(const QObject& object)
    {
        QList<int> counts;
        const QMetaObject* type = object.metaObject();
        for (int i = 0; i < type->methodCount(); ++i)
            if (type->method(i).methodType() == QMetaMethod::Signal)
                counts << (object.*(&Signals::receivers))(
                    QByteArray("2").append(type->method(i).methodSignature()).constData());
        return counts;
    }
};

} // namespace

class TestFollowers : public QObject {
    Q_OBJECT

    OwnFolders m_folders;
    std::unique_ptr<QQmlEngine> m_engine;
    std::unique_ptr<QQuickWindow> m_window;

    /// One of a type; what is drawn stands in a window.
    [[nodiscard]] std::unique_ptr<QObject> make(const QMetaObject* type) const
    {
        QQmlComponent component(m_engine.get());
        component.setData("import Tripoise\n" + QByteArray(type->className()).mid(10) + " {}", {});
        std::unique_ptr<QObject> object(component.create());
        if (!object)
            qWarning("%s", qPrintable(component.errorString()));
        if (auto* item = qobject_cast<QQuickItem*>(object.get())) {
            item->setParentItem(m_window->contentItem());
            item->setSize({640.0, 480.0});
        }
        return object;
    }

    /// One to follow, with something in it.
    [[nodiscard]] std::unique_ptr<QObject> makeFollowed(const QMetaObject* type,
                                                        const char* demo) const
    {
        std::unique_ptr<QObject> object = make(type);
        if (auto* session = qobject_cast<Session*>(object.get())) {
            session->start(demoFitting(demo));
            if (!QTest::qWaitFor([session] { return session->settled(); }))
                qWarning("no answer");
        }
        return object;
    }

    static void follow(QObject& follower, const QByteArray& property, QObject* followed)
    {
        const QMetaObject* type = follower.metaObject();
        const QMetaProperty at = type->property(type->indexOfProperty(property.constData()));
        QVariant value(at.metaType());
        *static_cast<QObject**>(value.data()) = followed; // QObject comes first in all of them
        QVERIFY(at.write(&follower, value));
    }

private slots:
    void initTestCase()
    {
        Warnings::gather();
        m_engine = std::make_unique<QQmlEngine>();
        m_engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
        m_window = std::make_unique<QQuickWindow>();
        QQmlComponent component(m_engine.get()); // registers the module
        component.setData("import Tripoise\nSession {}", {});
        const std::unique_ptr<QObject> session(component.create());
        QVERIFY2(session, qPrintable(component.errorString()));
    }

    void shouldFollowAsIfThereHadBeenNoneBefore_data()
    {
        QTest::addColumn<const QMetaObject*>("type");
        QTest::addColumn<QByteArray>("property");
        int found = 0;
        constexpr int most = 10'000; // far more than there are
        for (int id = QMetaType::User; id < QMetaType::User + most; ++id) {
            const QMetaObject* type =
                QMetaType::isRegistered(id) ? QMetaType(id).metaObject() : nullptr;
            if (!type || !QMetaType(id).flags().testFlag(QMetaType::PointerToQObject)
                || !isCreatable(type))
                continue;
            forProperties(type, [&](const QMetaProperty& property) {
                if (!isFollowing(property))
                    return;
                ++found;
                QTest::addRow("%s %s", type->className() + 10, property.name())
                    << type << QByteArray(property.name());
            });
        }
        QVERIFY2(found > 20, "there are more models than that");
    }
    void shouldFollowAsIfThereHadBeenNoneBefore()
    {
        QFETCH(const QMetaObject*, type);
        QFETCH(QByteArray, property);
        const QMetaObject* followed =
            type->property(type->indexOfProperty(property.constData())).metaType().metaObject();
        const auto first = makeFollowed(followed, "one-frame-two-bikes");
        auto second = makeFollowed(followed, "between-two-sizes");
        const QList<int> freeFirst = Signals::receiversOf(*first);
        const QList<int> freeSecond = Signals::receiversOf(*second);
        (void)Warnings::taken();

        const auto follower = make(type);
        QVERIFY(follower);
        follow(*follower, property, first.get());
        follow(*follower, property, nullptr);
        const QString ofNone = told(QVariant::fromValue(follower.get()));
        follow(*follower, property, first.get());
        follow(*follower, property, second.get());
        QCOMPARE(Signals::receiversOf(*first), freeFirst);
        const auto fresh = make(type);
        follow(*fresh, property, second.get());
        QCOMPARE(told(QVariant::fromValue(follower.get())), told(QVariant::fromValue(fresh.get())));

        follow(*fresh, property, nullptr);
        QCOMPARE(told(QVariant::fromValue(fresh.get())), ofNone);
        follow(*follower, property, nullptr);
        QCOMPARE(Signals::receiversOf(*second), freeSecond);

        follow(*follower, property, second.get());
        second.reset();
        QCOMPARE(follower->property(property.constData()).value<QObject*>(), nullptr);
        QCOMPARE(told(QVariant::fromValue(follower.get())), ofNone);
        QCOMPARE(Warnings::taken(), QStringList());
        exercise(*follower);
        exercise(*make(type));
    }
};

QTEST_MAIN(TestFollowers)
#include "tst_followers.moc"
