/** The guided first day: eight chapters that a newcomer walks with the practice car, told by the state of the day. */
package quoin.help.firstday;
