// SPDX-License-Identifier: MIT
#include "sheet/sheet.h"

#include "drawing/export.h"
#include "drawing/painter.h"
#include "sheet/flow.h"
#include "story/rider_reasons.h"
#include "wording/visible.h"

#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>

#include <algorithm>

namespace tripoise {

using sheet::Cell;
using sheet::Flow;

namespace {

constexpr double marginMm = 12.0;
constexpr double lettersMm = 3.1; // at best, about 9 points
constexpr double leastLettersMm = 1.9;
constexpr double lettersStepMm = 0.1;
constexpr double drawingShare = 0.34; // of the page's height, at best
constexpr double leastDrawingShare = 0.24;
constexpr double drawingStep = 0.02;
constexpr double drawingLetters = 0.9; // of the page's
constexpr double pictureShare = 0.7;   // height over width of a reason's picture

/// How large things are tried.
struct Scale {
    double letters = 0.0;
    double drawing = 0.0; ///< the drawing's share of the page's height
};

class Pages {
public:
    Pages(const Handing& handing, const QString& date)
        : m_handing(handing), m_date(date), m_theme(Theme::print()), m_view(viewOf(handing)),
          m_story(storyOf(handing))
    {
    }

    /// Whether it goes onto the page like that; painted where there is a painter.
    bool lay(QPainter* painter, SheetPage page, const QSizeF& paper, const Scale& scale) const
    {
        const double margin = marginMm * sheetUnitsPerMm;
        const QRectF area = QRectF(QPointF(), paper).adjusted(margin, margin, -margin, -margin);
        Flow flow(painter, area, scale.letters, m_theme);
        if (page == SheetPage::Workshop)
            workshop(flow, scale.drawing * paper.height());
        else
            rider(flow, scale.drawing * paper.height());
        return !flow.overflows();
    }

private:
    static SideView viewOf(const Handing& handing)
    {
        Shown shown;
        shown.chosen = handing.over.candidate;
        std::optional<Tried> tried = handing.over.own;
        if (handing.over.firstStep) // what is set today
            tried = tryContacts(
                contactsOf(handing.over.today()), *handing.over.advised, handing.size(),
                {handing.advice.person, handing.fitting.riding, handing.prepared, handing.tables});
        shown.tried = tried ? &*tried : nullptr;
        SideView view = makeSideView(handing.advice, shown, handing.fitting.riding.mix,
                                     handing.prepared, handing.tables);
        view.advised.reset();
        view.ridden.reset();
        view.other.reset();
        view.leaders.clear();
        return view;
    }

    static RiderStory storyOf(const Handing& handing)
    {
        const Verdict& verdict = handing.advice.verdict;
        std::optional<std::size_t> beside = verdict.other;
        if (beside == handing.over.candidate)
            beside =
                verdict.named.value_or(0) == handing.over.candidate ? std::nullopt : verdict.named;
        Choices choices = handing.fitting.choices;
        if (!handing.over.own) // what is only pulled about is not handed over
            choices.trial.reset();
        return RiderStory({handing.fitting, choices, handing.advice, handing.prepared,
                           handing.tables, handing.over.candidate, beside});
    }

    void head(Flow& flow, const QString& title) const
    {
        QStringList whose{sheetBicycle(m_handing), sheetRider(m_handing.fitting)};
        whose.removeAll(QString());
        flow.paragraph(whose.join(QLatin1Char(' ')), 1.5, QFont::DemiBold);
        flow.paragraph(title + QStringLiteral(" · ") + m_date, 1.0, QFont::Normal, true);
        flow.space(0.3);
        flow.rule(3.0);
    }

    void drawing(Flow& flow, double height, bool tape) const
    {
        const QRectF box = flow.take(height);
        if (!flow.painter())
            return;
        DrawingOptions options;
        options.furniture = false;
        options.words = options.tape = options.layers.dimensions = tape;
        options.layers.angles = false;
        options.lettersPx = drawingLetters * flow.letters();
        SideView view = m_view;
        if (tape)
            view.rider.reset();
        flow.painter()->save();
        paintSideView(*flow.painter(), box, view, m_theme, {}, options);
        flow.painter()->restore();
    }

    void workshop(Flow& flow, double drawingHeight) const
    {
        head(flow, workshopTitle());
        flow.space(0.4);
        flow.paragraph(workshopLine(m_handing));
        for (const QString& warning : workshopWarnings(m_handing))
            flow.paragraph(QStringLiteral("⚠ ") + warning, 1.0, QFont::DemiBold);
        drawing(flow, drawingHeight, true);
        const auto table = [&flow](const QString& heading, const QString& blank,
                                   const std::vector<SheetLine>& lines, double value) {
            flow.heading(heading, blank);
            for (const SheetLine& line : lines)
                flow.row({{line.name, 1.5},
                          {line.value, value, QFont::DemiBold},
                          {line.how, 3.7 - value, QFont::Normal, 0.9, true},
                          {{}, 1.0, QFont::Normal, 1.0, false, true}});
        };
        table(placesHeading(m_handing), asBuiltColumn(), placesToSet(m_handing), 1.1);
        if (const QString more = stagedLine(m_handing); !more.isEmpty())
            flow.paragraph(more);
        table(partsHeading(), torqueColumn(), partsToFit(m_handing), 1.5);
        flow.heading(ticksHeading());
        flow.space(0.3);
        flow.ticks(workshopTicks(m_handing), 2);
        flow.heading(remarksHeading());
        flow.space(0.3);
        flow.items(workshopRemarks(m_handing));
        flow.toWriteOn(QString());
        flow.space(0.6);
        flow.paragraph(workshopFoot(), 0.85, QFont::Normal, true);
    }

    /// Reasons side by side, each under its picture.
    void reasons(Flow& flow, const std::vector<PicturedReason>& told) const
    {
        const double gap = 1.5 * flow.letters();
        const double width = (flow.area().width() - 2.0 * gap) / 3.0;
        const double top = flow.top();
        double bottom = top;
        double left = flow.area().left();
        for (const PicturedReason& reason : told) {
            const QSizeF size(width, pictureShare * width);
            if (QPainter* painter = flow.painter()) {
                painter->save();
                painter->translate(left, top);
                paintReason(*painter, size, reason.picture, m_story, m_theme,
                            1.15 * flow.letters());
                painter->restore();
            }
            double y = top + size.height() + 0.4 * flow.letters();
            y += flow.write(reason.title, {left, y, width, 0.0}, flow.font(1.1, QFont::DemiBold));
            y += flow.write(reason.words, {left, y, width, 0.0}, flow.font());
            bottom = std::max(bottom, y);
            left += width + gap;
        }
        flow.take(bottom - top);
    }

    void rider(Flow& flow, double drawingHeight) const
    {
        head(flow, riderTitle());
        flow.space(0.6);
        flow.paragraph(m_story.verdict() + QLatin1Char(' ')
                           + setupWords(m_story.setup(), m_story.chosen()),
                       1.25, QFont::DemiBold);
        if (const QString both = rideFirst(m_handing); !both.isEmpty())
            flow.paragraph(both);
        flow.space(1.0);
        drawing(flow, drawingHeight, false);
        flow.space(0.8);
        const auto told = reasonsOf(m_story);
        reasons(flow, told);
        if (const QStringList feel = felt(told); !feel.isEmpty()) {
            flow.heading(feelHeading());
            flow.space(0.3);
            flow.items(feel);
        }
        flow.heading(changeHeading());
        flow.space(0.3);
        flow.items(changesFirst(m_handing));
        flow.space(0.3);
        flow.paragraph(comeBack());
        flow.heading(cautionsHeading());
        flow.space(0.3);
        flow.items(riderCautions(m_handing));
        const QStringList hazards = hazardsShown(m_handing);
        if (hazards.isEmpty())
            return;
        flow.heading(hazardsHeading());
        flow.space(0.3);
        flow.items(hazards);
        flow.space(0.6);
        flow.toWriteOn(signLine());
    }

    /// How it is to sit on it, but for what the reasons tell already.
    [[nodiscard]] QStringList felt(const std::vector<PicturedReason>& told) const
    {
        QStringList words;
        if (!m_story.has(WhichBike::Shown))
            return words;
        const SideView& shown = *m_story.of(WhichBike::Shown);
        for (const auto& [picture, sentence] :
             {std::pair(ReasonPicture::BackAndArms, backWords(shown, nullptr)),
              std::pair(ReasonPicture::BarAgainstSaddle, barWords(shown, nullptr)),
              std::pair(ReasonPicture::Knee, kneeWords(shown, nullptr))}) {
            const bool there =
                std::any_of(told.begin(), told.end(),
                            [p = picture](const PicturedReason& one) { return one.picture == p; });
            if (!there)
                words << sentence;
        }
        return words;
    }

    const Handing& m_handing;
    const QString& m_date;
    Theme m_theme;
    SideView m_view;
    RiderStory m_story;
};

/// The largest that goes onto the page: first the drawing gives way, then the letters.
Scale scaleFor(const Pages& pages, SheetPage page, const QSizeF& paper)
{
    const double least = leastLettersMm * sheetUnitsPerMm;
    Scale scale{lettersMm * sheetUnitsPerMm, drawingShare};
    while (!pages.lay(nullptr, page, paper, scale) && scale.letters > least) {
        if (scale.drawing > leastDrawingShare)
            scale.drawing -= drawingStep;
        else
            scale.letters -= lettersStepMm * sheetUnitsPerMm;
    }
    return scale;
}

} // namespace

void paintSheetPage(QPainter& painter, SheetPage page, const QSizeF& paper, const Handing& handing,
                    const QString& date)
{
    const Pages pages(handing, date);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(QRectF(QPointF(), paper), Qt::white);
    pages.lay(&painter, page, paper, scaleFor(pages, page, paper));
}

std::optional<QString> writeSheet(const QString& path, const Handing& handing,
                                  const std::vector<SheetPage>& pages, QPageSize::PageSizeId paper,
                                  const QString& date)
{
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter pdf(&buffer);
    pdf.setTitle(visibleLine(sheetBicycle(handing)));
    pdf.setCreator(QStringLiteral("Tripoise"));
    pdf.setPageMargins(QMarginsF());
    pdf.setPageSize(QPageSize(paper));
    QPainter painter;
    if (!painter.begin(&pdf))
        return QStringLiteral("PDF");
    const QSizeF size = QPageSize(paper).size(QPageSize::Millimeter) * sheetUnitsPerMm;
    const double scale = pdf.width() / size.width();
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (i > 0)
            pdf.newPage();
        painter.save();
        painter.scale(scale, scale);
        paintSheetPage(painter, pages[i], size, handing, date);
        painter.restore();
    }
    painter.end();
    return writeWhole(path, buffer.data());
}

} // namespace tripoise
