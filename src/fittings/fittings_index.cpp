// SPDX-License-Identifier: MIT
#include "fittings/fittings_index.h"

#include "document/builders_choice.h"
#include "document/read.h"
#include "fittings/fittings_folder.h"
#include "session/store.h"
#include "shipped/tables.h"
#include "wording/visible.h"

#include <QDateTime>
#include <QDir>
#include <QElapsedTimer>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>
#include <cerrno>
#include <cmath>
#include <mutex>
#include <unordered_map>

namespace tripoise::fittings {
namespace {

using Kind = FittingVerdict::Kind;

constexpr int version = 1;
constexpr qint64 tellEveryMs = 150;
std::mutex oneAtATime; // what one thread forgets, another does not write again

QString indexPath()
{
    return QDir(store::folder()).filePath(QStringLiteral("fittings.json"));
}

QString labelOf(const FrameSize& frame, bool oneModel)
{
    const QString size = asName(frame.size);
    return oneModel ? size : asName(frame.model) + QLatin1Char(' ') + size;
}

QStringList framesOf(const std::vector<FrameSize>& frames)
{
    QStringList told;
    std::string model;
    for (const FrameSize& frame : frames) {
        if (!told.isEmpty() && frame.model == model)
            told.last() += QStringLiteral(", ") + asName(frame.size);
        else
            told << (asName(frame.model) + QLatin1Char(' ') + asName(frame.size)).trimmed();
        model = frame.model;
    }
    return told;
}

/// Rear axle, top of the seat tube, both ends of the head tube, front axle, wheel radius; and where
/// there is a set-up: saddle, clamp and grip. From the bottom bracket, mm.
std::vector<int> pointsOf(const PreparedSize& size, const std::optional<AdvisedSetup>& best)
{
    const Skeleton& skeleton = size.skeleton;
    const Point up = upTube(skeleton.seatAngle);
    const Point seatTop =
        up * (skeleton.seatTubeMm ? skeleton.seatTubeMm->value : skeleton.headTop.y() / up.y());
    std::vector<int> points;
    const auto add = [&points](const Point& point) {
        points.push_back(int(std::lround(point.x())));
        points.push_back(int(std::lround(point.y())));
    };
    for (const Point& point :
         {skeleton.rearAxle, seatTop, skeleton.headTop, skeleton.headBottom, skeleton.frontAxle})
        add(point);
    points.push_back(int(std::lround(skeleton.wheelRadiusMm)));
    if (best)
        for (const Point& point : {best->setup.saddle.point(), best->setup.clamp, best->setup.grip})
            add(point);
    return points;
}

FittingVerdict verdictOf(const Solution& solution)
{
    const Advice& advice = solution.advice;
    if (!solution.lacks.empty())
        return {Kind::Undecided, {}, {}};
    if (!advice.solved)
        return {Kind::NothingFits, {}, {}};
    const Prepared& prepared = *solution.prepared;
    const bool oneModel =
        std::all_of(prepared.sizes.begin(), prepared.sizes.end(), [&](const PreparedSize& size) {
            return size.frame.model == prepared.sizes.front().frame.model;
        });
    const auto label = [&](std::size_t candidate) {
        return labelOf(prepared.sizes[advice.candidates[candidate].size].frame, oneModel);
    };
    if (const auto chosen = chosenCandidate(solution.fitting.choices, advice, prepared))
        return {Kind::Chosen, label(*chosen), {}};
    const Verdict& verdict = advice.verdict;
    if (verdict.kind == VerdictKind::None || !verdict.named)
        return {Kind::NoneFits, {}, {}};
    const QString named = label(*verdict.named);
    if (!verdict.other || verdict.kind == VerdictKind::Clear)
        return {Kind::Named, named, {}};
    return verdict.kind == VerdictKind::Slight
               ? FittingVerdict{Kind::Slight, named, {}}
               : FittingVerdict{Kind::Either, named, label(*verdict.other)};
}

/// File, time, size, what is decided of which sizes, rider, frames, points.
QJsonArray jsonOf(const Entry& entry)
{
    const Summary& summary = entry.summary;
    QJsonArray points;
    for (const int coordinate : summary.points)
        points.append(coordinate);
    return {QFileInfo(entry.path).fileName(),
            entry.timeMs,
            entry.size,
            int(summary.verdict.kind),
            summary.verdict.size,
            summary.verdict.other,
            summary.rider,
            QJsonArray::fromStringList(summary.frames),
            points};
}

Entry entryOf(const QJsonArray& json, const QDir& folder)
{
    const auto kind = Kind(std::clamp(json[3].toInt(), 0, int(Kind::Chosen)));
    Entry entry{folder.filePath(json[0].toString()),
                json[1].toInteger(),
                json[2].toInteger(),
                {{kind, json[4].toString(), json[5].toString()}, json[6].toString(), {}, {}}};
    for (const QJsonValue& frame : json[7].toArray())
        entry.summary.frames << frame.toString();
    for (const QJsonValue& coordinate : json[8].toArray())
        entry.summary.points.push_back(coordinate.toInt());
    return entry;
}

/// What an older program decided is not known to this one.
QJsonObject head(const QString& folder)
{
    return {{QStringLiteral("version"), version},
            {QStringLiteral("program"), QCoreApplication::applicationVersion()},
            {QStringLiteral("folder"), folder}};
}

/// Of files that are still there.
void write(const QString& folder, const std::vector<Entry>& entries)
{
    QJsonArray all;
    for (const Entry& entry : entries)
        if (entry.summary.verdict.kind != Kind::NotRead && QFileInfo::exists(entry.path))
            all.append(jsonOf(entry));
    QJsonObject index = head(folder);
    index.insert(QStringLiteral("fittings"), all);
    if (const auto failure =
            store::write(indexPath(), QJsonDocument(index).toJson(QJsonDocument::Compact)))
        qWarning("%s: %s", qPrintable(indexPath()), qPrintable(*failure));
}

QJsonObject read()
{
    return QJsonDocument::fromJson(store::read(indexPath()).bytes).object();
}

} // namespace

Summary summaryOf(const QByteArray& bytes, Solution& before, std::stop_token stop)
{
    const std::string_view text(bytes.constData(), std::size_t(bytes.size()));
    auto document = readDraft(text, shippedTables());
    auto* fitting = std::get_if<Fitting>(&document);
    const auto newer = fitting ? std::nullopt : readNewer(text, shippedTables());
    Summary summary;
    if (!fitting && !newer) {
        summary.verdict.kind = Kind::NotAFitting;
        return summary;
    }
    Solution solution =
        solve(fitting ? *fitting : *newer, shippedTables(), before, std::move(stop));
    const Fitting& read = solution.fitting;
    summary.verdict = verdictOf(solution);
    summary.rider = asName(read.rider.label);
    summary.frames = framesOf(read.frames);
    const Advice& advice = solution.advice;
    if (solution.prepared && !solution.prepared->sizes.empty()) {
        const auto chosen = advice.solved
                                ? chosenCandidate(read.choices, advice, *solution.prepared)
                                : std::nullopt;
        const std::size_t at = chosen ? *chosen : advice.verdict.named.value_or(0);
        if (at < advice.candidates.size())
            summary.points = pointsOf(solution.prepared->sizes[advice.candidates[at].size],
                                      advice.candidates[at].best);
        else
            summary.points = pointsOf(solution.prepared->sizes.front(), std::nullopt);
    }
    before = std::move(solution);
    return summary;
}

Listing list(const QString& folder)
{
    Listing listing{folder, {}, {}, {}};
    const QFileInfo there(folder);
    if (!there.isDir() && folder != ordinaryFolder())
        listing.failure = qt_error_string(there.exists() ? ENOTDIR : ENOENT);
    else if (there.isDir() && !there.isReadable())
        listing.failure = qt_error_string(EACCES);
    const QDir dir(folder);
    for (const QFileInfo& file :
         dir.entryInfoList({QStringLiteral("*.json")}, QDir::Files | QDir::System, QDir::Time))
        listing.entries.push_back(
            {file.filePath(), file.lastModified().toMSecsSinceEpoch(), file.size(), {}});
    std::unordered_map<QString, Entry> known;
    for (Entry& entry : kept())
        known.emplace(entry.path, entry);
    for (Entry& entry : listing.entries)
        if (const auto found = known.find(entry.path); found != known.end()
                                                       && found->second.timeMs == entry.timeMs
                                                       && found->second.size == entry.size)
            entry.summary = found->second.summary;
    return listing;
}

Listing listVersions(const QString& folder, const QString& path)
{
    Listing listing{folder, path, {}, {}};
    for (const QString& copy : store::copiesOf(path))
        listing.entries.insert(listing.entries.begin(),
                               {copy, store::keptAt(copy).toMSecsSinceEpoch(), 0, {}});
    return listing;
}

void complete(Listing& listing, const std::stop_token& stop,
              const std::function<void(const Listing&)>& tell)
{
    QElapsedTimer sinceTold;
    sinceTold.start();
    Solution before;
    bool any = false;
    for (Entry& entry : listing.entries) {
        if (stop.stop_requested())
            break;
        if (entry.summary.verdict.kind != Kind::NotRead)
            continue;
        Summary summary = summaryOf(store::read(entry.path).bytes, before, stop);
        if (stop.stop_requested()) // cut short
            break;
        entry.summary = std::move(summary);
        any = true;
        if (sinceTold.elapsed() >= tellEveryMs) {
            tell(listing);
            sinceTold.restart();
        }
    }
    if (!any)
        return;
    if (listing.versionsOf.isEmpty()) {
        const std::lock_guard lock(oneAtATime);
        write(listing.folder, listing.entries);
    }
    tell(listing);
}

std::vector<Entry> kept()
{
    const QJsonObject index = read();
    const QString folder = index[QStringLiteral("folder")].toString();
    QJsonObject expected = head(folder);
    for (auto each = expected.constBegin(); each != expected.constEnd(); ++each)
        if (index[each.key()] != each.value())
            return {};
    const QDir dir(folder);
    std::vector<Entry> entries;
    for (const QJsonValue& each : index[QStringLiteral("fittings")].toArray())
        entries.push_back(entryOf(each.toArray(), dir));
    return entries;
}

void forgetGone()
{
    const std::lock_guard lock(oneAtATime);
    if (QFileInfo::exists(indexPath()))
        write(read()[QStringLiteral("folder")].toString(), kept());
}

} // namespace tripoise::fittings
