// SPDX-License-Identifier: MIT
#include "brief/box.h"

#include "brief/part_entries.h"
#include "shipped/tables.h"
#include "wording/entry_words.h"

namespace tripoise {

Box::Box(QObject* parent) : QObject(parent)
{
    const auto seal = [this] { sealStep(); };
    const PartsModel::Bench bench{
        [this]() -> const Stock& { return stock(); },
        [this]() -> const Stock& { return m_shop; },
        [this]() -> const std::vector<Steerer>& { return m_steerers; },
        [this] { return fitting().bicycle.barKind; },
        [this](Stock inFitting, Stock inShop, const QString& what, const QString& key) {
            put(std::move(inFitting), std::move(inShop), what, key);
        },
        seal};
    m_lists = {makeParts<Stems>(bench), makeParts<Bars>(bench), makeParts<Spacers>(bench),
               makeParts<Cranks>(bench)};
}

void Box::sessionSet()
{
    const auto begin = [this] {
        for (const auto& list : m_lists)
            list->clearBench();
    };
    on(&Session::fittingChanged, [this] {
        if (stock() != m_followed || steerers() != m_steerers
            || fitting().bicycle.barKind != m_barKind)
            follow();
    });
    on(&Session::started, begin);
    on(&Session::speechChanged, [this] {
        for (const auto& list : m_lists)
            list->speakAgain();
        follow();
    });
    begin();
    follow();
    emit sessionChanged();
}

void Box::setDocuments(Documents* documents)
{
    if (documents == m_documents)
        return;
    if (m_documents)
        m_documents->disconnect(this);
    m_documents = documents;
    if (m_documents) {
        connect(m_documents, &Documents::boxChanged, this,
                [this] { setShop(m_documents->shopBox()); });
        setShop(m_documents->shopBox());
    }
    emit documentsChanged();
}

void Box::setShop(const Stock& shop)
{
    if (shop == m_shop)
        return;
    m_shop = shop;
    follow();
}

QString Box::summary() const
{
    return boxSummary(stock());
}

void Box::put(Stock inFitting, Stock inShop, const QString& what, const QString& key)
{
    if (!session())
        return;
    const bool remembers = inShop != m_shop;
    m_shop = std::move(inShop);
    Fitting next = fitting();
    next.stock = std::move(inFitting);
    if (next == fitting())
        follow(); // the shop's box alone
    else
        edit(std::move(next), what, key);
    if (remembers && m_documents)
        m_documents->rememberBox(m_shop);
}

std::vector<Steerer> Box::steerers() const
{
    std::vector<Steerer> steerers;
    for (const FrameSize& frame : fitting().frames)
        steerers.push_back(steererOf(frame, shippedTables().frame));
    return steerers;
}

void Box::follow()
{
    m_followed = stock();
    m_steerers = steerers();
    m_barKind = fitting().bicycle.barKind;
    for (const auto& list : m_lists)
        list->follow();
    emit changed();
}

} // namespace tripoise
