// SPDX-License-Identifier: MIT
#include "geometry/library_model.h"

#include "document/frame_list.h"
#include "wording/entry_words.h"
#include "wording/table_page_words.h"

#include <numeric>

namespace tripoise {

void LibraryModel::sessionSet()
{
    on(&Session::speechChanged, [this] {
        if (!m_rows.empty())
            emit dataChanged(index(0), index(count() - 1));
        emit tickedChanged();
    });
    emit sessionChanged();
}

void LibraryModel::refresh()
{
    std::vector<Row> rows;
    for (library::KeptFrame& frame : library::all())
        rows.push_back({std::move(frame), {}});
    replace(m_rows, std::move(rows));
    say({});
    emit tickedChanged();
}

void LibraryModel::tick(int row, int size, bool ticked)
{
    if (row < 0 || row >= count())
        return;
    Row& at = m_rows[std::size_t(row)];
    if (size < 0 || std::size_t(size) >= at.frame.sizes.size())
        return;
    if (ticked)
        at.ticked.insert(std::size_t(size));
    else
        at.ticked.erase(std::size_t(size));
    emit dataChanged(index(row), index(row), {Sizes});
    emit tickedChanged();
}

int LibraryModel::ticked() const
{
    return std::accumulate(m_rows.begin(), m_rows.end(), 0,
                           [](int sum, const Row& row) { return sum + int(row.ticked.size()); });
}

std::vector<FrameSize> LibraryModel::tickedSizes() const
{
    std::vector<FrameSize> sizes;
    for (const Row& row : m_rows)
        for (const std::size_t size : row.ticked)
            sizes.push_back(row.frame.sizes[size]);
    return sizes;
}

QString LibraryModel::addText() const
{
    const std::vector<FrameSize> sizes = tickedSizes();
    const std::size_t replaced = session() ? replacedBy(sizes, fitting()) : 0;
    return addSizesText(int(sizes.size()), false, int(replaced));
}

bool LibraryModel::add()
{
    if (!session() || ticked() == 0)
        return false;
    const std::vector<FrameSize> sizes = tickedSizes();
    QStringList models;
    for (const Row& row : m_rows)
        if (!row.ticked.empty())
            models << QString::fromStdString(row.frame.model);
    auto next = withFrames(fitting(), sizes);
    if (!next) {
        say(tooManySizes(mostFrames));
        return false;
    }
    if (*next != fitting())
        edit(std::move(*next), keptAddedStep(int(sizes.size()), models));
    return true;
}

void LibraryModel::forget(int row)
{
    if (row < 0 || row >= count())
        return;
    if (const auto failure = library::forget(m_rows[std::size_t(row)].frame.path)) {
        say(tr("It is still kept: %1.").arg(*failure));
        return;
    }
    beginRemoveRows({}, row, row);
    m_rows.erase(m_rows.begin() + row);
    endRemoveRows();
    emit countChanged();
    emit tickedChanged();
}

void LibraryModel::say(const QString& what)
{
    if (m_said == what)
        return;
    m_said = what;
    emit saidChanged();
}

int LibraryModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : int(m_rows.size());
}

QVariant LibraryModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid))
        return {};
    const Row& row = m_rows[std::size_t(index.row())];
    if (role == Model || role == Qt::DisplayRole)
        return QString::fromStdString(row.frame.model);
    if (role != Sizes)
        return {};
    QVariantList list;
    for (std::size_t i = 0; i < row.frame.sizes.size(); ++i)
        list << QVariantMap{
            {QStringLiteral("name"), QString::fromStdString(row.frame.sizes[i].size)},
            {QStringLiteral("figures"), frameFigures(row.frame.sizes[i].geometry)},
            {QStringLiteral("ticked"), row.ticked.contains(i)}};
    return list;
}

QHash<int, QByteArray> LibraryModel::roleNames() const
{
    return {{Model, "model"}, {Sizes, "sizes"}};
}

} // namespace tripoise
