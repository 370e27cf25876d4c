// SPDX-License-Identifier: MIT
#include "brief/riding_model.h"

#include "advice/mix.h"
#include "brief/keys.h"
#include "document/field_facts.h"
#include "document/limits.h"
#include "document/words.h"
#include "wording/brief_words.h"
#include "wording/speech.h"
#include "wording/words.h"

#include <algorithm>

namespace tripoise {
namespace {

FieldSpec luggageSpec(bool front)
{
    FieldSpec spec;
    spec.label = luggageLabel(front);
    spec.kind = NumberKind::Mass;
    const Limits limits = factsOf(&Luggage::frontKg).limits;
    spec.plausible = {limits.low, limits.high};
    spec.decimals = 1;
    spec.marked = Marked::AsTheBody;
    return spec;
}

} // namespace

RidingModel::RidingModel(QObject* parent)
    : QAbstractListModel(parent), m_front(luggageSpec(true)), m_rear(luggageSpec(false))
{
    const auto bind = [this](NumberField& field, double Luggage::*mass) {
        const auto write = [this, &field, mass](double value) {
            change(field.label(), field.label(),
                   [&](Riding& riding) { riding.luggage.*mass = value; });
        };
        connect(&field, &NumberField::accepted, this, write);
        connect(&field, &NumberField::cleared, this, [write] { write(0.0); });
        connect(&field, &NumberField::finished, this, [this] { sealStep(); });
    };
    bind(m_front, &Luggage::frontKg);
    bind(m_rear, &Luggage::rearKg);
}

void RidingModel::sessionSet()
{
    on(&Session::fittingChanged, [this] {
        if (fitting().riding != m_followed || bendsFreely() != m_followedBending)
            follow();
    });
    on(&Session::started, this, &RidingModel::begin);
    on(&Session::speechChanged, [this] {
        m_front.setLabel(luggageLabel(true));
        m_rear.setLabel(luggageLabel(false));
        m_front.speakAnew();
        m_rear.speakAnew();
        follow();
    });
    begin();
    follow();
    emit sessionChanged();
}

/// Another fitting: nothing stays of what was typed and turned for the one before.
void RidingModel::begin()
{
    m_turned = -1;
    m_front.forget();
    m_rear.forget();
}

void RidingModel::follow()
{
    m_followed = fitting().riding;
    m_followedBending = bendsFreely();
    const Luggage& luggage = m_followed.luggage;
    m_front.setValue(luggage.frontKg);
    m_rear.setValue(luggage.rearKg);
    emit dataChanged(index(0), index(rowCount() - 1));
    emit changed();
}

template <typename Change>
void RidingModel::change(const QString& what, const QString& key, const Change& change)
{
    Fitting next = fitting();
    change(next.riding);
    edit(std::move(next), what, key);
}

int RidingModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : int(allUses.size());
}

QHash<int, QByteArray> RidingModel::roleNames() const
{
    return {{Qt::DisplayRole, "name"}, {ShareRole, "share"}, {ShareTextRole, "shareText"}};
}

QVariant RidingModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Use use = allUses[std::size_t(index.row())];
    const double share = fitting().riding.mix.of(use);
    switch (role) {
    case Qt::DisplayRole: return nameOf(use);
    case ShareRole: return share;
    case ShareTextRole: return percent(share);
    default: return {};
    }
}

void RidingModel::setShare(int row, double share)
{
    if (row < 0 || row >= rowCount())
        return;
    const Mix& now = fitting().riding.mix;
    if (row != m_turned || now != m_made) {
        m_turned = row;
        m_from = now;
    }
    m_made = withShare(m_from, allUses[std::size_t(row)], share);
    change(tr("mix of riding"), QStringLiteral("riding/mix/%1").arg(row),
           [this](Riding& riding) { riding.mix = m_made; });
}

bool RidingModel::pressKey(int row, const QString& text)
{
    bool figure = false;
    const int tens = text.toInt(&figure);
    if (!figure || text.size() != 1)
        return false;
    setShare(row, tens / 10.0);
    sealStep();
    return true;
}

void RidingModel::applyPreset(int preset)
{
    if (preset < 0 || preset >= int(allUsualMixes.size()))
        return;
    change(tr("mix of riding"), {},
           [&](Riding& riding) { riding.mix = mixOf(allUsualMixes[std::size_t(preset)]); });
}

QStringList RidingModel::presets() const
{
    QStringList names;
    for (const UsualMix usual : allUsualMixes)
        names << nameOf(usual);
    return names;
}

int RidingModel::preset() const
{
    for (std::size_t i = 0; i < allUsualMixes.size(); ++i)
        if (fitting().riding.mix == mixOf(allUsualMixes[i]))
            return int(i);
    return -1;
}

int RidingModel::foremost() const
{
    const auto& shares = fitting().riding.mix.share;
    return int(std::max_element(shares.begin(), shares.end()) - shares.begin());
}

bool RidingModel::traffic() const
{
    return fitting().riding.traffic;
}

void RidingModel::setTraffic(bool traffic)
{
    change(tr("traffic"), {}, [&](Riding& riding) { riding.traffic = traffic; });
}

bool RidingModel::footRetention() const
{
    return fitting().riding.footRetention;
}

void RidingModel::setFootRetention(bool footRetention)
{
    change(tr("pedals"), {}, [&](Riding& riding) { riding.footRetention = footRetention; });
}

QString RidingModel::feetDown() const
{
    return wordFor(feetDownWords, fitting().riding.feetDown);
}

void RidingModel::setFeetDown(const QString& word)
{
    change(tr("feet on the ground"), {},
           [&](Riding& riding) { riding.feetDown = valueOf(feetDownWords, word.toStdString()); });
}

void RidingModel::setBendsFreely(bool bendsFreely)
{
    Fitting next = fitting();
    next.rider.bendsFreely = bendsFreely;
    edit(std::move(next), tr("bending"));
}

void RidingModel::leaveLuggage()
{
    change(tr("luggage"), {}, [](Riding& riding) { riding.luggage = {}; });
}

QString RidingModel::summary() const
{
    return ridingSummary(fitting().riding);
}

} // namespace tripoise
