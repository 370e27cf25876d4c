// SPDX-License-Identifier: MIT
#include "session/drafts.h"

#include "session/store.h"

#include <QDir>
#include <QUuid>

namespace tripoise {
namespace {

QString pathOf(const QString& name, const char* suffix)
{
    return QDir(store::folder(QStringLiteral("drafts"))).filePath(name + QLatin1String(suffix));
}

QString originOf(const QString& name)
{
    return QString::fromUtf8(store::read(pathOf(name, ".origin")).bytes);
}

QStringList namesIn(const QString& pattern)
{
    const QDir drafts(store::folder(QStringLiteral("drafts")));
    QStringList names = drafts.entryList({pattern}, QDir::Files, QDir::Time);
    for (QString& name : names)
        name.truncate(name.indexOf(QLatin1Char('.')));
    return names;
}

/// The lock of a draft, taken where no other program has it. It goes with its value.
std::unique_ptr<QLockFile> lockOf(const QString& name)
{
    return store::lock(pathOf(name, ".lock"));
}

void removeFiles(const QString& name)
{
    QFile::remove(pathOf(name, ".json"));
    QFile::remove(pathOf(name, ".origin"));
}

/// What programs left that were killed before they wrote a draft.
void clearStaleLocks()
{
    for (const QString& name :
         namesIn(QStringLiteral("*lock")) + namesIn(QStringLiteral("*.origin")))
        if (!QFile::exists(pathOf(name, ".json")) && lockOf(name)->isLocked())
            QFile::remove(pathOf(name, ".origin"));
}

QString freshName()
{
    return QUuid::createUuid().toString(QUuid::Id128);
}

} // namespace

Drafts::Drafts(Written written) : m_written(std::move(written))
{
    m_writer.setMaxThreadCount(1); // one after the other
    own(freshName());
    m_writer.start([] {
        store::tidy();
        clearStaleLocks();
    });
}

Drafts::~Drafts() = default;

bool Drafts::own(const QString& name)
{
    auto lock = lockOf(name);
    if (store::isOfAnother(*lock))
        return false; // it was quicker
    m_name = name;
    m_lock = std::move(lock);
    return true;
}

std::optional<LeftOver> Drafts::takeOver(const QString& origin)
{
    for (const QString& name : left()) {
        if ((!origin.isEmpty() && originOf(name) != origin) || !own(name))
            continue;
        return LeftOver{store::read(pathOf(name, ".json")).bytes, originOf(name)};
    }
    return std::nullopt;
}

bool Drafts::anyLeft() const
{
    return !left().isEmpty();
}

/// Newest first.
QStringList Drafts::left() const
{
    QStringList names = namesIn(QStringLiteral("*.json"));
    names.removeIf([this](const QString& name) {
        return name == m_name || m_damaged.contains(name) || !lockOf(name)->isLocked();
    });
    return names;
}

std::vector<Drafts::Other> Drafts::others() const
{
    std::vector<Other> others;
    for (const QString& name : namesIn(QStringLiteral("*.json")))
        if (name != m_name)
            others.push_back({name,
                              {store::read(pathOf(name, ".json")).bytes, originOf(name)},
                              store::isOfAnother(*lockOf(name))});
    return others;
}

bool Drafts::remove(const QString& name)
{
    const auto lock = lockOf(name);
    if (lock->isLocked())
        removeFiles(name);
    return !QFile::exists(pathOf(name, ".json"));
}

QString Drafts::setAside()
{
    const QString draft = pathOf(m_name, ".json");
    const QString origin = originOf(m_name);
    const QString kept =
        store::setAside(origin.isEmpty() ? draft : origin, store::read(draft).bytes);
    if (!kept.isEmpty())
        removeFiles(m_name);
    m_damaged << m_name;
    own(freshName());
    return kept.isEmpty() ? draft : kept;
}

void Drafts::write(const QByteArray& bytes, const QString& origin)
{
    m_writer.clear(); // what has not been begun is old now
    m_writer.start([bytes, origin, name = m_name, this] {
        auto failure = store::write(pathOf(name, ".origin"), origin.toUtf8());
        if (!failure)
            failure = store::write(pathOf(name, ".json"), bytes);
        m_written(failure);
    });
}

void Drafts::drop()
{
    m_writer.clear();
    m_writer.waitForDone();
    removeFiles(m_name);
}

} // namespace tripoise
