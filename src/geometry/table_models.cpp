// SPDX-License-Identifier: MIT
#include "geometry/table_models.h"

#include "wording/table_page_words.h"

namespace tripoise {
namespace {

QString keyOf(FigureMark mark)
{
    switch (mark) {
    case FigureMark::None: return {};
    case FigureMark::Given: return QStringLiteral("given");
    case FigureMark::Follows: return QStringLiteral("follows");
    case FigureMark::Assumed: return QStringLiteral("assumed");
    case FigureMark::Contradicts: return QStringLiteral("contradicts");
    case FigureMark::Doubtful: return QStringLiteral("doubtful");
    case FigureMark::Unusual: return QStringLiteral("unusual");
    case FigureMark::Corrected: return QStringLiteral("corrected");
    case FigureMark::NotUnderstood: return QStringLiteral("not understood");
    case FigureMark::SetAside: return QStringLiteral("set aside");
    }
    return {};
}

} // namespace

void TableLinesModel::show(std::vector<TableLine> lines, const std::vector<std::string>& sizes)
{
    const bool renamed = m_sizes != sizes;
    m_sizes = sizes;
    replace(m_lines, std::move(lines));
    if (renamed && !m_lines.empty())
        emit dataChanged(index(0), index(count() - 1), {Figures});
}

int TableLinesModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : int(m_lines.size());
}

QVariant TableLinesModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid))
        return {};
    const TableLine& line = m_lines[std::size_t(index.row())];
    switch (role) {
    case Heading: return line.heading;
    case Qt::DisplayRole:
    case Meaning: return line.meaning;
    case Open: return line.open;
    case SetAside: return line.setAside;
    case Assigned: return line.assigned;
    case Printed: return line.readColumn.has_value();
    case Figures: return figures(line);
    default: return {};
    }
}

QHash<int, QByteArray> TableLinesModel::roleNames() const
{
    return {{Heading, "heading"},   {Meaning, "meaning"},   {Open, "open"},
            {SetAside, "setAside"}, {Assigned, "assigned"}, {Printed, "printed"},
            {Figures, "figures"}};
}

QVariantList TableLinesModel::figures(const TableLine& line) const
{
    QVariantList list;
    const QString name = line.meaning.isEmpty() ? line.heading : line.meaning;
    for (std::size_t i = 0; i < line.figures.size() && i < m_sizes.size(); ++i) {
        const TableFigure& figure = line.figures[i];
        const QString told = figure.agree
                                 ? figure.told + u' ' + takesText(*line.column, *figure.agree)
                                 : figure.told;
        list << QVariantMap{
            {QStringLiteral("text"), figure.text},
            {QStringLiteral("mark"), keyOf(figure.mark)},
            {QStringLiteral("told"), told},
            {QStringLiteral("spoken"),
             figureSpoken(QString::fromStdString(m_sizes[i]), name, figure.text)},
            {QStringLiteral("acts"), figure.agree || figure.mark == FigureMark::Corrected}};
    }
    return list;
}

} // namespace tripoise
