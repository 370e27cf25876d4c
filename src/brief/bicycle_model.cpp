// SPDX-License-Identifier: MIT
#include "brief/bicycle_model.h"

#include "brief/keys.h"
#include "document/frame_list.h"
#include "document/words.h"
#include "shipped/tables.h"
#include "wording/bicycle_words.h"
#include "wording/brief_words.h"
#include "wording/entry_words.h"

#include <QVariant>

#include <algorithm>

namespace tripoise {

BicycleModel::BicycleModel(QObject* parent) : QObject(parent)
{
    for (const auto group : {BicycleGroup::Wheels, BicycleGroup::Guard, BicycleGroup::Parts})
        m_forms.emplace_back(
            bicycleEntries(group), this,
            [this](const EntryOf<Bicycle>& entry, std::optional<double> value) {
                Bicycle next = fitting().bicycle;
                entry.write(next, value);
                put(next, entryName(entry.key),
                    QStringLiteral("bicycle ") + QString::fromLatin1(entry.key));
            },
            [this] { sealStep(); });
}

void BicycleModel::sessionSet()
{
    on(&Session::fittingChanged, this, &BicycleModel::show);
    on(&Session::speechChanged, [this] {
        for (const auto& form : m_forms)
            form.nameAgain();
        show();
    });
    show();
    emit sessionChanged();
}

void BicycleModel::show()
{
    for (const auto& form : m_forms)
        form.show(fitting().bicycle, shippedTables());
    const auto& frames = fitting().frames;
    if (!fitting().bicycle.tyreMm
        && std::any_of(frames.begin(), frames.end(),
                       [](const FrameSize& frame) { return frame.asSold.tyreMm.has_value(); }))
        form(BicycleGroup::Wheels).field("tyre")->setStandIn(std::nullopt); // what is sold counts
    emit changed();
}

/// What is said of tyres and mudguards here is said of every size.
void BicycleModel::put(const Bicycle& bicycle, const QString& what, const QString& key)
{
    Fitting next = fitting();
    next.bicycle = bicycle;
    if (mountingOf(bicycle) != mountingOf(fitting().bicycle))
        next = withOneMounting(std::move(next), mountingOf(bicycle));
    if (next == fitting())
        show(); // what was typed is as it was
    else
        edit(std::move(next), what, key);
}

QString BicycleModel::barKind() const
{
    return wordFor(barKindWords, fitting().bicycle.barKind);
}

QString BicycleModel::soldUnder() const
{
    if (!fitting().riding.soldUnder)
        return {};
    const std::string_view word = wordOf(standardWords, *fitting().riding.soldUnder);
    return QString::fromUtf8(word.data(), qsizetype(word.size()));
}

void BicycleModel::setSoldUnder(const QString& standard)
{
    Fitting next = fitting();
    next.riding.soldUnder = valueOf(standardWords, standard.toStdString());
    edit(std::move(next), tr("standard"));
}

QStringList BicycleModel::standards() const
{
    QStringList words;
    for (const auto& [word, standard] : standardWords)
        words << QString::fromUtf8(word.data(), qsizetype(word.size()));
    return words;
}

QStringList BicycleModel::standardNames() const
{
    QStringList names;
    for (const auto& [word, standard] : standardWords)
        names << nameOf(standard);
    return names;
}

QString BicycleModel::wheelsDiffer() const
{
    return mountingsOf(fitting()).size() < 2
               ? QString()
               : wheelsDifferText(fitting().frames, fitting().bicycle);
}

QVariantList BicycleModel::answers() const
{
    QVariantList list;
    const auto mountings = mountingsOf(fitting());
    if (mountings.size() < 2)
        return list;
    for (const Mounting& mounting : mountings)
        list << QVariantMap{{QStringLiteral("text"), mountingText(mounting)},
                            {QStringLiteral("value"), int(list.size())}};
    return list;
}

void BicycleModel::answer(int value)
{
    const auto mountings = mountingsOf(fitting());
    if (value >= 0 && std::size_t(value) < mountings.size())
        edit(withOneMounting(fitting(), mountings[std::size_t(value)]), oneMountingStep());
}

QString BicycleModel::summary() const
{
    return wheelsDiffer().isEmpty() ? bicycleSummary(fitting().bicycle) : wheelsDifferSummary();
}

void BicycleModel::setMudguard(bool fitted)
{
    if (fitted == mudguard())
        return;
    Bicycle next = fitting().bicycle;
    next.mudguard = fitted ? std::optional(Mudguard{}) : std::nullopt;
    put(next, mudguardStep(), {});
}

void BicycleModel::setBarKind(const QString& word)
{
    Bicycle next = fitting().bicycle;
    next.barKind = barKindFrom(word);
    if (next.barKind == fitting().bicycle.barKind)
        next.barKind.reset();
    put(next, bicycleBarStep(), {});
}

} // namespace tripoise
