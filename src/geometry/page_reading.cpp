// SPDX-License-Identifier: MIT
#include "geometry/page_reading.h"

#include "shipped/tables.h"

namespace tripoise {
namespace {

PageRead readPage(const PageOrder& order, const std::stop_token& stop)
{
    const bool isNew = order.work.text.empty();
    PageRead read{isNew ? TableWork() : order.work, {}, order.offered, isNew};
    const auto text = tableTextOfPage(order.page, shippedHeadings(), stop);
    const bool taken = text
                       && (!order.readableOnly
                           || readGeometryTable(*text, shippedHeadings(), {}, stop).readable());
    read.work.text = order.before + (taken ? *text : order.plain) + order.behind;
    read.answer = workedOut(read.work, stop);
    return read;
}

} // namespace

PageReading::PageReading(Deliver deliver)
    : m_deliver(std::move(deliver)),
      m_beside([this](quint64 number, const PageOrder& order, const std::stop_token& stop) {
          PageRead read = readPage(order, stop);
          if (!stop.stop_requested())
              m_deliver(number, std::move(read));
      })
{
}

} // namespace tripoise
